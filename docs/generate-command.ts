/** Writes the page on the command, or says with `--check` whether the written one is fresh. */
import { commandPage } from "./command-page.js";
import { writePage } from "./write-page.js";

writePage("command.md", commandPage(), "command-page");
