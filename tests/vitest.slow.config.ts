import type { ViteUserConfig } from "vitest/config";
import { slow } from "./slow.js";
import shared from "./vitest.config.js";

const config: ViteUserConfig = {
  ...shared,
  test: { ...shared.test, include: [...slow], exclude: [] },
};

export default config;
