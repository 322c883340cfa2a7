/** The shape that a dictionary in another language must have: the same entries, other texts. */
export type Words<English> = {
  readonly [Key in keyof English]: English[Key] extends string
    ? string
    : English[Key] extends (...values: infer Values) => string
      ? (...values: Values) => string
      : Words<English[Key]>;
};
