/**
 * Chevrotain 13 groups with `Object.groupBy`, which Node has from 21 on. Loaded before it, this keeps the
 * tool running on Node 20.
 */
type GroupBy = <T>(items: Iterable<T>, key: (item: T, index: number) => PropertyKey) => object;

const host = Object as unknown as { groupBy?: GroupBy };
host.groupBy ??= (items, key) => {
  const groups: Record<PropertyKey, unknown[]> = Object.create(null);
  let index = 0;
  for (const item of items) {
    const name = key(item, index++);
    (groups[name] ??= []).push(item);
  }
  return groups;
};
