/** Brings a part of the page in view and puts the focus there. */
export function goToPart(id: string): void {
  const part = document.getElementById(id);
  part?.scrollIntoView({ block: "start" });
  part?.focus({ preventScroll: true });
}
