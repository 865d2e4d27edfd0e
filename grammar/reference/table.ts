/** A table in Markdown, its columns padded as the project's formatter has them. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const escaped = [head, ...rows].map((row) => row.map((cell) => cell.replaceAll('|', '\\|')));
  const widths = head.map((_, i) => Math.max(3, ...escaped.map((row) => row[i]!.length)));
  const [first, ...rest] = escaped.map((row) =>
    line(row.map((cell, i) => cell.padEnd(widths[i]!))),
  );
  return [first, line(widths.map((width) => '-'.repeat(width))), ...rest].join('\n');
}

function line(cells: readonly string[]): string {
  return `| ${cells.join(' | ')} |`;
}
