// Lists that stand beside the page are open where there is room for them.
for (const [query, selector] of [
  ["(min-width: 60rem)", ".pages"],
  ["(min-width: 84rem)", ".contents"],
]) {
  const room = matchMedia(query);
  const list = document.querySelector(selector);
  const follow = () => {
    if (list) list.open = room.matches;
  };
  room.addEventListener("change", follow);
  follow();
}

document.querySelector(".pages [aria-current]")?.scrollIntoView({ block: "nearest" });

// Only what scrolls has to be reached with the keyboard.
const settle = () => {
  for (const one of document.querySelectorAll(".scrolls")) {
    if (one.scrollWidth > one.clientWidth) one.tabIndex = 0;
    else one.removeAttribute("tabindex");
  }
};
addEventListener("load", settle);
addEventListener("resize", settle);
