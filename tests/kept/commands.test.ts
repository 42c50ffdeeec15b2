import { roleIds } from "bondmil";
import { expect, it } from "vitest";
import { firstDocument } from "../../src/command/first-documents.js";
import { type Ran, runHere, type World } from "../command/run-here.js";
import { unversioned } from "./unversioned.js";

const shop = "docs/installations/shop.json";
const coldStore = "docs/installations/cold-store.json";
const first = "tests/kept/01/installation.json";
const jumper = "size main-bonding-jumper --edition 2023 --material copper --supply";

/** Command lines, those that are refused among them; a word with a blank is written with an underscore. */
const lines: readonly string[] = [
  "begin --edition 2020",
  ...["transformer", "load", "sun"].map((holds) => `begin --edition 2023 --holds ${holds}`),
  "begin --edition 2007",
  "begin",
  "begin - --edition 2020",
  "begin shop.json --edition 2020",
  "begin shop.json --edition 2020",
  "begin it's_new.json --edition 2023 --holds load",
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
  `compare ${coldStore} --editions 2011,2014`,
  `compare ${shop} --over readings --editions 2017`,
  `compare ${shop} --amendments county.json`,
  `schedule ${shop} --place 12_Mill_Road --prepared-by J._Doe --date today`,
  `schedule ${shop} --place _ --prepared-by _ --date _`,
  `size main-bonding-jumper ${shop}`,
  "size main-bonding-jumper nowhere.json",
  "size main-bonding-jumper nowhere.json --edition 2023 --material copper",
  ...roleIds.flatMap((role) => [
    `size ${role}`,
    `size ${role} --edition 2017 --supply 2_x_500_kcmil_Al --material copper`,
  ]),
  "size equipment-grounding-conductor --edition 2017 --amperes 400 --material aluminum",
  "size equipment-grounding-conductor --edition 2017 --amperes 400 --material aluminum --as json",
  "size equipment-grounding-conductor --edition 2017 --amperes two --material aluminum",
  ...["12.5", "5.", ".5", "5x", "x5", "1.2.3", "90000"].map(
    (amperes) => `size equipment-grounding-conductor --edition 2020 --amperes ${amperes} --material copper`,
  ),
  "size impedance-grounding-conductor --edition 2020 --amperes 12.5 --material copper-clad-aluminum",
  "size intersystem-bonding-conductor --edition 2017 --termination busbar",
  ...["copper", "aluminum", "copper-clad_aluminum"].map((metal) => `${jumper} 12_X_500_kcmil_${metal}`),
  ...["500_kcmil_Cu", "0_x_4/0_AWG_Cu", "1_x_4/0_AWG_Cu_+_2x1_AWG_Al_", "1234567890_x_4/0_AWG_Cu"].map(
    (sets) => `${jumper} ${sets}`,
  ),
  ...["_Cu", "4/0_AWG", "4/0_AWG_Cu_+", "3_x_Cu", "nothing_Cu"].map((sets) => `${jumper} ${sets}`),
  `${jumper} 4/0_AWG_Cu --place 12_Mill_Road --prepared-by J._Doe --date today`,
  `${jumper} 4/0_AWG_Cu --amperes 200`,
  "size main-bonding-jumper --edition 2023 --supply 3_x_600 --material copper",
  "size mainbondingjumper --edition 2023",
  "sweep equipment-grounding-conductor --material copper,aluminum --amperes 100,200,400 --as json-lines",
  "sweep equipment-grounding-conductor --material copper --amperes 100,200,400 --editions 2008,2023",
  "sweep main-bonding-jumper --supply-material copper --material copper --editions 2023",
  "sweep main-bonding-jumper",
  "sweep main-bonding-jumper --material copper",
  "sweep intersystem-bonding-conductor",
  ...[
    "--sets 1,_2 --sizes 4/0_AWG,_250_kcmil --editions 2023",
    "--sets 1,two",
    "--sets 0",
    "--sizes 4/0_AWG,nothing",
    "--amperes 100",
    "--editions 2023,1999",
  ].map(
    (options) => `sweep main-bonding-jumper --supply-material copper,aluminum --material copper ${options}`,
  ),
  ...["--amperes 100,two", "--amperes 90000", "--sizes 1", "--sets 1", "--supply-material copper"].map(
    (options) => `sweep equipment-grounding-conductor --material copper ${options}`,
  ),
  "corpus --role intersystem-bonding-conductor",
  "corpus --role intersystem-bonding-conductor --as json",
  "corpus --role nobody",
  "corpus --source nowhere",
  "schedule nowhere.json",
  `schedule ${shop} --as pdf`,
  `schedule ${shop} --as`,
  `schedule ${shop} --as csv --as csv`,
  `schedule ${shop} more.json`,
  "schedule -h",
  "help paint",
  "sweep --help",
  "stream --strict=no",
  "stream lines.ndjson",
  ...["supply-material", "sizes", "sets", "amperes", "material", "editions", "as"].map(
    (option) => `sweep main-bonding-jumper --${option}`,
  ),
  ...["edition", "supply", "amperes", "conductor", "material"].map(
    (option) => `size main-bonding-jumper --${option}`,
  ),
  "size main-bonding-jumper --edition 2020,2023",
  "corpus --source",
  "paint",
  "",
];

/** What is sent to a terminal in another form than into a file, or is not sent there. */
const shown: readonly string[] = [
  ...lines.filter((line) => !/^(size|sweep|compare|corpus)|--as/.test(line)),
  `compare ${shop} --over readings`,
  `compare ${coldStore} --editions 2011,2014`,
  `${jumper} 500_kcmil_Cu --place 12_Mill_Road --prepared-by J._Doe --date today`,
  "corpus --role intersystem-bonding-conductor",
  `check ${coldStore}`,
  ...["schedule", "report", "check", "compare", "supplies", "stream"],
  "schedule -",
  "size main-bonding-jumper -",
  `compare ${shop} --over amendments --amendments -`,
  "report shop.json",
  "report - --as svg",
  "report plans/my_shop.JSON --as html --place here",
  "report plans/it's.json.txt --as svg",
  "supplies C:\\plans\\feeder.json --as svg",
  "supplies --as svg",
  "size main-bonding-jumper - --as html",
  "size main-bonding-jumper --as html",
  `size main-bonding-jumper --edition 2023 --supply 4/0_AWG_Cu --material copper --as csv`,
  `schedule ${shop} --as csv`,
];

const narrow: readonly string[] = [
  "",
  ...["begin", "size", "stream", "corpus"].map((name) => `help ${name}`),
  `schedule ${shop}`,
  `check ${coldStore}`,
  `compare ${shop} --editions 2017,2023`,
  "schedule",
  "begin",
  "begin --edition 2020",
  `report ${shop} --as markdown`,
  `schedule ${shop} --as csv`,
  "sweep equipment-grounding-conductor --material copper --amperes 100 --editions 2023",
  "corpus --role intersystem-bonding-conductor",
  "corpus --role intersystem-bonding-conductor --edition 2023 --as json",
  "stream",
];

const load = JSON.stringify(firstDocument("load", "2023", ""));

/** What comes from standard input, with the lines that read it. */
const read: readonly (readonly [input: string, ...lines: string[]])[] = [
  ["", "schedule", "schedule -", "supplies", "supplies -", "size main-bonding-jumper -", "stream"],
  ["{", "schedule", "supplies", "size main-bonding-jumper -", "stream --strict"],
  ...["null", "[]", '"format"', "7", "{}"].map(
    (input) => [input, "schedule", "supplies", "size main-bonding-jumper -", "stream"] as const,
  ),
  [load, "supplies", "supplies --place here --as csv", "supplies --as svg", "schedule"],
  [
    JSON.stringify(firstDocument("service", "2023", "")),
    "supplies",
    "supplies --as json",
    "supplies --as svg",
    "stream --give rows",
    "stream --first-line 123456789012345",
    ...["0", "x5", "5x", "05", "1.5", "1234567890123456"].map((first) => `stream --first-line ${first}`),
  ],
];

/** A conductor, one that lacks its supply, an installation without its parts, and what is neither. */
const stream = [
  '{"role":"main-bonding-jumper","input":{"code":{"year":"2023"},"supply":{"sets":[{"count":2,"size":"500 kcmil","material":"copper"}]},"conductor":{"material":"copper"}}}',
  '{"role":"main-bonding-jumper","input":{"code":{"year":"2023"}}}',
  '{"title":"one","code":{"year":"2023"}}',
  "",
  "[",
  '["role"]',
  '{"role":"roof"}',
  '{"role":"main-bonding-jumper","input":{"code":{"year":"2023"},"supply":{"sets":[{"count":1,"size":"4/0 AWG","material":"copper"}]},"conductor":{"material":"copper"}},"more":1}',
  '{"role":"intersystem-bonding-conductor","input":{"code":{"year":"2023"},"termination":"apart"}}',
  "",
].join("\n");

/** Words of the engine, which differ from one version of it to the next. */
const ofTheEngine = /(is not JSON|mend it): .*/g;

const told = ({ code, output, errors }: Ran) =>
  `${output}\n-- errors\n${errors}\n-- ends with ${code}\n`.replaceAll(ofTheEngine, "$1: ...");

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
  await expect(await tellAll(lines, { created: new Map() })).toMatchFileSnapshot(file("into-a-file.txt"));
});

it.each([
  [90, shown],
  [30, narrow],
])("commands write in a terminal of %i letters as before", async (columns, lines) => {
  await expect(await tellAll(lines, { columns, inputIsTerminal: true })).toMatchFileSnapshot(
    file(`in-a-terminal-of-${columns}.txt`),
  );
});

it("commands read from standard input as before", async () => {
  const all: string[] = [];
  for (const [input, ...lines] of read)
    all.push(`< ${input.slice(0, 60)}\n${await tellAll(lines, { input })}`);
  await expect(all.join("\n")).toMatchFileSnapshot(file("from-standard-input.txt"));
});

it.each(["schedule", "rows", "check", "nothing"])("a stream is answered as before: %s", async (give) => {
  await expect(told(await runHere(["stream", "--give", give], { input: stream }))).toMatchFileSnapshot(
    file(`stream-${give}.txt`),
  );
});
