/** The figures of piers that stand alone, each a term with its working. */
import { phrase } from '../../../../shared/phrase';
import type { BlockFacts } from '../../resolve/env';
import { named, sum, type Term } from '../../working/term';
import { apartFigures } from '../apart-figures';
import type { Figure, Needs } from '../needs';
import type { Height } from '../wall/height';

/** `high` is the height of the courses. */
export function pierFigures(facts: BlockFacts, height: Height, high: Term, needs: Needs): Figure[] {
  const [mortar, ...concretes] = needs.mixes.filter((mix) => !mix.apart);
  const hours = needs.tasks.map((t) => t.hours);
  const [footing, core] = facts.line('footing') ? concretes : [undefined, ...concretes];
  return [
    { key: 'bricks', term: bricksTerm(needs) },
    { key: 'courses', term: { ...height.term, label: phrase`Courses` } },
    { key: 'height', term: high },
    { key: 'mortar', term: named(phrase`Mortar, laid`, mortar!.litres) },
    ...apartFigures(needs),
    { key: 'hours', term: sum(phrase`Hours of the gang`, 'h', hours) },
    ...(footing
      ? [{ key: 'concrete', term: named(phrase`Concrete in the footing`, footing.litres) }]
      : []),
    ...(core ? [{ key: 'core', term: named(phrase`Concrete in the core`, core.litres) }] : []),
  ];
}

function bricksTerm({ bricks }: Needs): Term {
  const kinds = bricks.map((b) => b.bricks);
  return kinds.length > 1
    ? sum(phrase`Bricks, all kinds`, 'bricks', kinds)
    : named(phrase`Bricks`, kinds[0]!);
}
