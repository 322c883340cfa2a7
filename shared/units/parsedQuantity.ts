/** A number in the field's own unit, or why the text is none. */
export type ParsedQuantity =
  { readonly ok: true; readonly value: number } | { readonly ok: false; readonly message: string };
