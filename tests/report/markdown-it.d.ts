/** The part of markdown-it that the tests use; it brings no types. */
declare module "markdown-it" {
  interface Token {
    readonly type: string;
    readonly content: string;
    readonly children: readonly Token[] | null;
  }
  export default function markdownIt(options: { readonly html: boolean; readonly linkify: boolean }): {
    readonly parse: (text: string, environment: object) => readonly Token[];
  };
}
