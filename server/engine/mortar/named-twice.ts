/** Materials of a mix that it names more than once, such as one dosed twice, told apart. */

/** A name for each: the second of one material is `sand.2`, the third `sand.3`, so that no two have the same. */
export function namesOf(parts: readonly { readonly material: string }[]): string[] {
  const seen = new Map<string, number>();
  return parts.map(({ material }) => {
    const n = (seen.get(material) ?? 0) + 1;
    seen.set(material, n);
    return n > 1 ? `${material}.${n}` : material;
  });
}
