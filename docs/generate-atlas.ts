/** Writes the atlas of readings, or says with `--check` whether the written one is fresh. */
import { atlasPage } from "./atlas/page.js";
import { writePage } from "./write-page.js";

writePage("atlas.md", atlasPage(), "atlas");
