import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { type Browser, chromium } from "playwright-core";
import { type Need, need } from "../needs.js";

const executablePath = process.env.CHROMIUM ?? "/usr/bin/chromium";

/** Debian's Chromium, which is installed where it is missing and may be. */
export function neededChromium(): Need {
  if (!existsSync(executablePath) && process.getuid?.() === 0) {
    const install = "apt-get update && apt-get install -y --no-install-recommends chromium";
    spawnSync("bash", ["-c", install], { stdio: "ignore", timeout: 300_000 });
  }
  return need(executablePath, existsSync(executablePath), "install chromium or set CHROMIUM to its path");
}

/** A browser of its own. */
export function launch(): Promise<Browser> {
  return chromium.launch({ executablePath, args: ["--no-sandbox"] });
}
