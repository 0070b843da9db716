/** Inputs of which one is needed, or at most one is wanted. */
export interface OneOf {
  readonly keys: readonly string[];
  readonly required: boolean;
  /** What if more than one is given: an issue, nothing, or only `use` counts and a warning says so. */
  readonly both: 'refused' | 'allowed' | { readonly use: string };
}

/** Inputs that say something only together. */
export interface Together {
  readonly keys: readonly string[];
  /** What the result says if only a part is given, which then does not count; without it that is an issue. */
  readonly otherwise?: { readonly code: string; readonly text: string };
}

/** An input counts only where another has one of these values, or is given at all; `or` names others that will do. */
export interface When {
  readonly key: string;
  readonly or?: readonly string[];
  readonly is?: readonly (string | number | boolean)[];
}

/** A part of the form with a heading. */
export interface Section {
  readonly label: string;
  readonly description?: string;
}

/** How an input goes with others of the same record. */
export interface FieldRules {
  readonly oneOf?: OneOf;
  readonly together?: Together;
  /** All must hold for the input to count. */
  readonly when?: readonly When[];
  /** Whether it is needed wherever it counts. */
  readonly needed?: boolean;
  readonly section?: Section;
}
