/** A description of data after the Frictionless Data Package, version 1. */
export interface DataPackage {
  readonly name: string;
  readonly title: string;
  readonly description: string;
  readonly licenses: readonly { readonly name: string; readonly title: string }[];
  readonly resources: readonly Resource[];
}

/** One file of the data. */
export interface Resource {
  readonly name: string;
  readonly title?: string;
  readonly path: string;
  readonly profile: "tabular-data-resource" | "data-resource";
  readonly format: string;
  readonly mediatype: string;
  readonly encoding: "utf-8";
  readonly dialect?: object;
  /** Size of the file, so that one that was cut off shows. */
  readonly bytes?: number;
  readonly hash?: string;
  readonly schema: {
    readonly fields: readonly {
      readonly name: string;
      readonly type: string;
      readonly description: string;
      readonly constraints?: { readonly enum: readonly string[] };
    }[];
    readonly missingValues?: readonly string[];
    readonly primaryKey?: readonly string[];
  };
}

/** The license of this project, which is that of the arrangement and of our own words; numbers of the code are facts. */
export const license = { name: "MIT", title: "MIT License" };
