import { useEffect, useState } from "preact/hooks";

/** The last value that was on the screen for a frame; nothing before the first. */
export function usePainted<T>(value: T): T | null {
  const [painted, setPainted] = useState<T | null>(null);
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    // What is set in a frame is painted before the next task. A page in the background paints none.
    const next = (): void => {
      timer = setTimeout(() => setPainted(() => value));
    };
    if (document.hidden) {
      next();
      return () => clearTimeout(timer);
    }
    const frame = requestAnimationFrame(next);
    return () => {
      cancelAnimationFrame(frame);
      clearTimeout(timer);
    };
  }, [value]);
  return painted;
}

/** The last value that stood for so many milliseconds; nothing before the first. */
export function useLater<T>(value: T, pause: number): T | null {
  const [later, setLater] = useState<T | null>(null);
  useEffect(() => {
    const timer = setTimeout(() => setLater(() => value), pause);
    return () => clearTimeout(timer);
  }, [value]);
  return later;
}
