import { expect, it } from "vitest";
import { linkFaults } from "../../docs/website/check/links.js";
import { folderWith } from "./folder.js";

const other = '<h2 id="there">There</h2>';

it.each([
  ['<a href="other.html#there">x</a>', []],
  ['<a href="https://example.com/page">x</a>', []],
  ['<a href="missing.html">x</a>', ["page.html: missing.html is not there"]],
  ['<a href="folder">x</a>', ["page.html: folder is not there"]],
  ['<a href="other.html#here">x</a>', ["page.html: other.html#here has an anchor that is not there"]],
  ['<a href="#nowhere">x</a>', ["page.html: #nowhere has an anchor that is not there"]],
  ['<a href="../out.html">x</a>', ["page.html: ../out.html leads out of the site"]],
  ['<a href="/root.html">x</a>', ["page.html: /root.html is no address that every host can serve"]],
  ['<a href="">x</a>', ["page.html:  is an empty link"]],
  ['<form action="gone.html"></form>', ["page.html: gone.html is not there"]],
  ['<img src="gone.svg" alt="">', ["page.html: gone.svg is not there"]],
  [
    '<script src="https://example.com/a.js"></script>',
    ["page.html: https://example.com/a.js is loaded from outside of the site"],
  ],
  ['<p id="a"></p><p id="a"></p>', ['page.html has the id "a" twice']],
])("the links of %s have their faults", (html, faults) => {
  expect(linkFaults(folderWith({ "page.html": html, "other.html": other, "folder/in.html": "" }))).toEqual(
    faults,
  );
});
