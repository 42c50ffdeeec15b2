import type { ViteUserConfig } from "vitest/config";
import shared from "../vitest.config.js";

/** What needs a browser and a build of the page; "npm run try:test", apart from "npm test". */
const config: ViteUserConfig = {
  ...shared,
  test: {
    ...shared.test,
    include: ["tests/try/**/*.browser.ts"],
    expect: { poll: { timeout: 120_000 } },
  },
};

export default config;
