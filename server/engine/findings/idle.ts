/** Lines that are read and have nothing to work on. */
import { phrase } from '../../../shared/phrase';
import { readStyle } from '../../../shared/show';
import type { BlockFacts, LineFacts } from '../resolve/env';
import type { Origin } from '../working/term';
import type { Remark } from './remark';

function idle(origin: Origin, message: string): Remark {
  return { code: 'line-idle', severity: 'warning', origin, message };
}

/** A number after a bond that takes none. */
export function bondNumber(line: LineFacts, bond: BlockFacts): Remark | undefined {
  if (!line.values.n || bond.line('n') || takesNumber(bond)) return undefined;
  return idle(line.at('n'), phrase`${bond.title} takes no number; this one changes nothing.`);
}

/** Whether what a wall gives for `n` changes the bond. */
export function takesNumber(bond: BlockFacts): boolean {
  const lines = [...bond.lines('course'), ...bond.lines('courses')];
  return lines.some(({ values }) => {
    const units = values.units?.kind === 'list' ? values.units.of : [];
    return values.letter !== undefined || units.some((u) => u.letter !== undefined);
  });
}

/** `salvage` and `halves` where nothing comes down, `match` where nothing is bought. */
export function repairIdle(
  facts: BlockFacts,
  mendings: readonly { readonly down?: unknown; readonly wanted?: unknown }[],
): Remark[] {
  const down = mendings.some((m) => m.down);
  const bought = mendings.some((m) => m.wanted);
  const told = (line: LineFacts | undefined, message: string) =>
    line ? [idle(line.origin, message)] : [];
  return [
    ...(down
      ? []
      : [
          ...told(
            facts.line('salvage'),
            phrase`Nothing comes down here, so nothing is salvaged: that takes a rebuild or a recope.`,
          ),
          ...told(
            facts.line('halves'),
            phrase`Nothing comes down here, so no halves are kept: that takes a rebuild or a recope.`,
          ),
        ]),
    ...(bought
      ? []
      : told(
          facts.line('match'),
          phrase`No brick is bought for this repair: that takes a rebuild, a recope or a cut-out.`,
        )),
  ];
}

/** A sample of figures that shows no way to write them. */
export function figuresUnreadable(sample: string, origin: Origin): Remark | undefined {
  if (readStyle(sample)) return undefined;
  const message = phrase`This shows no way to write figures. Write one thousand two hundred and thirty-four point five six as your readers do, with the sign of the currency: "£1,234.56" or "1.234,56 €".`;
  return { code: 'figures-unreadable', severity: 'error', origin, message };
}

/** Lines of an opening that have no lintel or arch to be about, or that an arch makes needless. */
export function headIdle(facts: BlockFacts): Remark[] {
  const kind = facts.line('head')?.word('kind') ?? '';
  const arch = kind === 'segmental' || kind === 'semicircular';
  const lintel = facts.line('lintel');
  const bearing = facts.line('bearing');
  const centre = facts.line('centre');
  return [
    lintel && arch
      ? idle(lintel.origin, phrase`An arch carries what is over it: the lintel is left out.`)
      : undefined,
    bearing && (!lintel || arch)
      ? idle(bearing.origin, phrase`There is no lintel here that would bear on anything.`)
      : undefined,
    centre && !arch
      ? idle(centre.origin, phrase`There is no arch here to turn on a centre.`)
      : undefined,
  ].filter((remark): remark is Remark => remark !== undefined);
}
