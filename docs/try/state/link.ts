import type { Json } from "./data.js";

const word = "installation=";

/** A link that unfolds to more than this is no installation. */
const mostCharacters = 2_000_000;

/** The fragment of an address that carries a document; nothing of it is sent to a server. */
export async function fragmentOf(document: Json): Promise<string> {
  const stream = new Blob([JSON.stringify(document)])
    .stream()
    .pipeThrough(new CompressionStream("deflate-raw"));
  const bytes = new Uint8Array(await new Response(stream).arrayBuffer());
  const text = Array.from(bytes, (byte) => String.fromCharCode(byte)).join("");
  return `#${word}${btoa(text).replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "")}`;
}

/** What a fragment carries. */
export type Carried =
  | { readonly kind: "nothing" }
  | { readonly kind: "document"; readonly document: Json }
  | { readonly kind: "unreadable" };

/** The document in the fragment of an address. */
export async function carriedBy(fragment: string): Promise<Carried> {
  if (!fragment.startsWith(`#${word}`)) return { kind: "nothing" };
  try {
    const text = atob(
      fragment
        .slice(1 + word.length)
        .replaceAll("-", "+")
        .replaceAll("_", "/"),
    );
    const bytes = Uint8Array.from(text, (character) => character.charCodeAt(0));
    const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
    return { kind: "document", document: JSON.parse(await textOf(stream)) as Json };
  } catch {
    return { kind: "unreadable" };
  }
}

async function textOf(stream: ReadableStream<Uint8Array>): Promise<string> {
  const decoder = new TextDecoder();
  let text = "";
  const reader = stream.getReader();
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return text + decoder.decode();
    text += decoder.decode(value, { stream: true });
    if (text.length > mostCharacters) throw new RangeError("the link unfolds to more than an installation");
  }
}
