import { h, render } from "preact";
import { startingPoints } from "./starting-points/starting-points.js";
import { carriedBy } from "./state/link.js";
import { App } from "./view/app.js";

async function begin(): Promise<void> {
  const carried = await carriedBy(location.hash);
  const first = carried.kind === "document" ? carried.document : (startingPoints[0]?.document ?? {});
  const told = carried.kind === "unreadable" ? "The link holds no installation that can be read." : "";
  const place = document.getElementById("page");
  if (place === null) throw new Error("the page has no place for its content");
  place.replaceChildren();
  place.className = "";
  render(h(App, { first, told }), place);
  if ("serviceWorker" in navigator) await navigator.serviceWorker.register("offline.js");
}

void begin();
