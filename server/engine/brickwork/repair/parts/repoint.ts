/** Joints raked out and pointed: so much of a face, or so much length of joint. */
import { phrase } from '../../../../../shared/phrase';
import { rakeShallow } from '../../../findings/repairs/rake-shallow';
import type { LineFacts } from '../../../resolve/env';
import { sum, type Term } from '../../../working/term';
import { inUnit, unitNames } from '../../lengths';
import type { Figure } from '../../needs';
import { saidFrom } from '../../said';
import { amountIn } from '../amounts';
import type { MendingOf } from '../mending';
import { inFace, inJoints } from '../pointing';
import { repointSaid } from '../says';
import type { Site } from '../site';

export const repoint: MendingOf = (site) => {
  const lines = site.facts.lines('repoint');
  if (!lines.length) return undefined;
  const all = lines.map((line) => pointed(line, site));
  const mortar = sum(
    phrase`pointing`,
    unitNames(site.env).volume,
    all.map((each) => each.mortar),
  );
  return {
    mortar,
    old: mortar,
    figures: [
      ...figure(
        'repointed',
        phrase`Area repointed`,
        all.filter((p) => p.line.values.area),
      ),
      ...figure(
        'repointed-joints',
        phrase`Joints repointed`,
        all.filter((p) => p.line.values.joints),
      ),
    ],
    tasks: all.map(({ line, amount }) =>
      amountIn(
        line.values.joints ? 'repoint-joints' : 'repoint',
        phrase`Raking out and pointing`,
        amount,
      ),
    ),
    remarks: lines.flatMap((line) => rakeShallow(line, site.masonry)),
    says: lines.flatMap((line) => saidFrom(repointSaid(line, site.env), line)),
    does: ['raking'],
  };
};

interface Pointed {
  readonly line: LineFacts;
  readonly amount: Term;
  readonly mortar: Term;
}

function pointed(line: LineFacts, site: Site): Pointed {
  if (!line.values.joints) {
    const amount = line.term('area', phrase`Area repointed`);
    return { line, amount, mortar: inFace(amount, line, site) };
  }
  const amount = line.term('joints', phrase`Joints repointed`);
  return { line, amount, mortar: inJoints(amount, line, site) };
}

function figure(key: string, label: string, of: readonly Pointed[]): Figure[] {
  const [first, ...more] = of.map((each) => each.amount);
  if (!first) return [];
  const all = [first, ...more.map((term) => inUnit(term, first.unit))];
  return [{ key, term: more.length ? sum(label, first.unit, all) : first }];
}
