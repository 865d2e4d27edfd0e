/**
 * What is honest to tell a client of new bricks beside old ones, in sentences made of what is known. None promises a
 * match: what is not measured is not said.
 */
import { phrase } from '../../../../shared/phrase';
import { defaultLine, type Env } from '../../resolve/env';
import type { Term } from '../../working/term';
import { lengthText } from '../lengths';
import type { Compared, Stood } from './types';

/** All of it. */
export function honestOf(one: Compared, stood: Stood, env: Env): string[] {
  return [
    ...levelSaid(one, stood, env),
    ...perpendSaid(one, env),
    ...widthSaid(one, env),
    ...varySaid(one, env),
    ...lookSaid(one),
    ...eyeSaid(env),
  ];
}

/** So much of it as belongs in a quote: what the client will see. `cut` where they are cut to a height that fits. */
export function quotedOf(one: Compared, stood: Stood, cut: boolean, env: Env): string[] {
  const plain = one.bed?.accepted && isSame(one.larger?.height, env);
  const level = cut || plain ? [] : levelSaid(one, stood, env);
  const bond = one.perpend?.accepted === false ? perpendSaid(one, env) : [];
  return [...level, ...bond, ...lookSaid(one), ...eyeSaid(env)];
}

function levelSaid({ bed, larger }: Compared, { beds }: Stood, env: Env): string[] {
  if (!bed) return [];
  const joint = bed.joint.value.toNumber();
  if (joint <= 0)
    return [phrase`New bricks are too high for courses to keep level with the old ones.`];
  const high = highSaid(larger?.height, env);
  const mm = lengthText(env, joint);
  if (bed.accepted)
    return [phrase`${high}courses are kept level with bed joints of ${mm}.`].map(upper);
  const how = joint > beds.most ? phrase`wider` : phrase`thinner`;
  return [
    phrase`${high}courses keep level only with bed joints of ${mm}, ${how} than is usual, and that shows.`,
  ].map(upper);
}

function highSaid(higher: Term | undefined, env: Env): string {
  if (!higher) return '';
  if (isSame(higher, env)) return phrase`new bricks are as high as the old ones; `;
  return phrase`new bricks are ${off(higher, phrase`higher`, phrase`lower`, env)} than the old ones; `;
}

function perpendSaid(one: Compared, env: Env): string[] {
  const { perpend, larger } = one;
  if (!perpend || !larger || (perpend.accepted && isUsual(one, 'length', env))) return [];
  const joint = perpend.joint.value.toNumber();
  const they = phrase`They are ${off(larger.length, phrase`longer`, phrase`shorter`, env)}`;
  if (perpend.accepted)
    return [
      phrase`${they}; upright joints of ${lengthText(env, joint)} keep them in bond with the old work.`,
    ];
  return [phrase`${they} than the old ones, and upright joints will not line up with theirs.`];
}

function widthSaid(one: Compared, env: Env): string[] {
  const { larger } = one;
  if (!larger || isUsual(one, 'width', env)) return [];
  const mm = lengthText(env, Math.abs(larger.width.value.toNumber()));
  const which = larger.width.value.gt(0) ? phrase`wider` : phrase`narrower`;
  return [phrase`They are ${mm} ${which}: one face is kept in line with the old work, not both.`];
}

/** Of handmade and old bricks more than their size can be told. */
function varySaid({ bed, brick }: Compared, env: Env): string[] {
  const made = brick.facts?.line('made')?.word('made');
  const apart = bed?.within?.tolerance.apart;
  return [
    ...(apart
      ? [
          phrase`Bricks of one delivery may be ${lengthText(env, apart.value.toNumber())} apart in height.`,
        ]
      : []),
    ...(made === 'reclaimed'
      ? [phrase`Reclaimed bricks differ in size, shade and soundness.`]
      : []),
    ...(made === 'handmade' ? [phrase`Handmade bricks differ in size and shape.`] : []),
  ];
}

function lookSaid({ brick: { facts } }: Compared): string[] {
  const words = ['colour', 'texture'].map((key) => facts?.line(key)?.word(key).trim() ?? '');
  const said = words.filter(Boolean).map((word) => word.replace(/[.\s]+$/, ''));
  const made = facts?.line('made')?.word('made').replace('-', ' ');
  const all = [...said, ...(made ? [made] : [])];
  return all.length ? [phrase`They are described as ${all.join('; ')}.`] : [];
}

function eyeSaid(env: Env): string[] {
  const said = defaultLine(env, 'match-say')?.word('say').trim();
  return said ? [said] : [];
}

function off(by: Term, more: string, less: string, env: Env): string {
  const mm = by.value.toNumber();
  return `${lengthText(env, Math.abs(mm))} ${mm > 0 ? more : less}`;
}

/** No more than bricks of one delivery might differ by: not worth a sentence. */
function isUsual({ near, larger }: Compared, side: 'length' | 'width', env: Env): boolean {
  const by = larger?.[side];
  return isSame(by, env) || (by && near?.allowed[side].value.gte(by.value.abs())) || false;
}

/** As near as a reader is told a length. */
function isSame(by: Term | undefined, env: Env): boolean {
  return !by || lengthText(env, Math.abs(by.value.toNumber())).startsWith('0 ');
}

function upper(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
