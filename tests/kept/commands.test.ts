import { roleIds } from "bondmil";
import { expect, it } from "vitest";
import { type Ran, runHere, type World } from "../command/run-here.js";
import { unversioned } from "./unversioned.js";

const shop = "docs/installations/shop.json";
const first = "tests/kept/01/installation.json";

/** Command lines, those that are refused among them; a word with a blank is written with an underscore. */
const lines: readonly string[] = [
  "begin --edition 2020",
  ...["transformer", "load", "sun"].map((holds) => `begin --edition 2023 --holds ${holds}`),
  "begin --edition 2007",
  `schedule ${shop}`,
  `schedule ${shop} --as markdown`,
  `schedule ${shop} --as csv`,
  `schedule ${first} --edition 2023`,
  `check ${first}`,
  `check ${shop}`,
  `check ${shop} --as html`,
  `check ${shop} --as svg`,
  `compare ${shop} --over editions --as csv`,
  `compare ${shop} --over readings`,
  `compare ${shop} --over arrangements`,
  `compare ${shop} --over amendments`,
  `compare ${shop} --editions 2017,2023`,
  `compare ${shop} --editions 2017,2024`,
  ...roleIds.flatMap((role) => [
    `size ${role}`,
    `size ${role} --edition 2017 --supply 2_x_500_kcmil_Al --material copper`,
  ]),
  "size equipment-grounding-conductor --edition 2017 --amperes 400 --material aluminum",
  "size equipment-grounding-conductor --edition 2017 --amperes 400 --material aluminum --as json",
  "size equipment-grounding-conductor --edition 2017 --amperes two --material aluminum",
  "size intersystem-bonding-conductor --edition 2017 --termination busbar",
  "size main-bonding-jumper --edition 2023 --supply 3_x_600 --material copper",
  "size mainbondingjumper --edition 2023",
  "sweep equipment-grounding-conductor --material copper,aluminum --amperes 100,200,400 --as json-lines",
  "sweep equipment-grounding-conductor --material copper --amperes 100,200,400 --editions 2008,2023",
  "sweep main-bonding-jumper --supply-material copper --material copper --editions 2023",
  "sweep main-bonding-jumper",
  "corpus --role intersystem-bonding-conductor",
  "corpus --role intersystem-bonding-conductor --as json",
  "corpus --role nobody",
  "schedule nowhere.json",
  `schedule ${shop} --as pdf`,
  "paint",
  "",
];

/** A conductor, one that lacks its supply, and an installation without its parts. */
const stream = [
  '{"role":"main-bonding-jumper","input":{"code":{"year":"2023"},"supply":{"sets":[{"count":2,"size":"500 kcmil","material":"copper"}]},"conductor":{"material":"copper"}}}',
  '{"role":"main-bonding-jumper","input":{"code":{"year":"2023"}}}',
  '{"title":"one","code":{"year":"2023"}}',
  "",
].join("\n");

/** Of these the form depends on where they are written. */
const shown = lines.filter((line) => !/^(size|compare|corpus)|--as/.test(line));

const told = ({ code, output, errors }: Ran) => `${output}\n-- errors\n${errors}\n-- ends with ${code}\n`;

async function tellAll(lines: readonly string[], world: World): Promise<string> {
  const all: string[] = [];
  for (const line of lines) {
    const words = line
      .split(" ")
      .filter((word) => word !== "")
      .map((word) => word.replaceAll("_", " "));
    all.push(`$ bondmil ${line}\n${told(await runHere(words, world))}`);
  }
  return unversioned(all.join("\n"));
}

const file = (name: string) => new URL(`./commands/${name}`, import.meta.url).pathname;

it("commands write into a file as before", async () => {
  await expect(await tellAll(lines, {})).toMatchFileSnapshot(file("into-a-file.txt"));
});

it("commands write in a terminal as before", async () => {
  await expect(await tellAll(shown, { columns: 90, inputIsTerminal: true })).toMatchFileSnapshot(
    file("in-a-terminal.txt"),
  );
});

it.each(["schedule", "rows", "check", "nothing"])("a stream is answered as before: %s", async (give) => {
  await expect(told(await runHere(["stream", "--give", give], { input: stream }))).toMatchFileSnapshot(
    file(`stream-${give}.txt`),
  );
});
