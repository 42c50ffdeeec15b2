import type { DrawnLabel, Rectangle, Sheet } from "../../src/drawing/drawing.js";

export function overlap(a: Rectangle, b: Rectangle): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

/** Pairs of labels of a sheet that overlap, by their text. */
export function overlapping({ labels }: Sheet): readonly string[] {
  return labels.flatMap((one, i) =>
    labels
      .slice(i + 1)
      .flatMap((other) => (overlap(one, other) ? [`${nameOf(one)} / ${nameOf(other)}`] : [])),
  );
}

/** Labels that a line crosses, by their text. */
export function crossed({ labels, lines }: Sheet): readonly string[] {
  return labels.flatMap((label) =>
    lines.flatMap(({ points }) =>
      points.slice(1).flatMap((end, i) => {
        const start = points[i] ?? end;
        const line = {
          x: Math.min(start.x, end.x),
          y: Math.min(start.y, end.y),
          width: Math.max(Math.abs(end.x - start.x), 0.1),
          height: Math.max(Math.abs(end.y - start.y), 0.1),
        };
        return overlap(label, line) ? [nameOf(label)] : [];
      }),
    ),
  );
}

function nameOf({ lines }: DrawnLabel): string {
  return lines.join(" ");
}
