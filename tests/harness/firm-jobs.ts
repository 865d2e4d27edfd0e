/** Invented jobs of an invented firm, so many and always the same ones: for tests and measurements of a firm's folder. */

export const FIRM_FILE = `perpend 1
use uk

firm "Harbottle & Daughter"
  payment  14 days

labour
  bricklayer  £27.50 per h
  labourer    £16 per h
  gang        1 bricklayer + 1 labourer

output
  source    "Our own days, 2025"
  facework  60 bricks per h
  repoint   1 m2 per h
`;

/** Numbers as by chance, and the same at every run (Lehmer’s generator: 16807 modulo 2^31 − 1, Park and Miller 1988). */
export class Chance {
  private state: number;

  constructor(seed: number) {
    this.state = (seed % 2_147_483_646) + 1;
  }

  next(): number {
    this.state = (this.state * 16_807) % 2_147_483_647;
    return this.state / 2_147_483_647;
  }

  between(low: number, high: number): number {
    return low + Math.floor(this.next() * (high - low + 1));
  }
}

const STREETS = ['Orchard Lane', 'Mill Row', 'Station Road', 'Priory Close', 'Well Street'];
const CLIENTS = ['P. Oakes', 'M. Lindqvist', 'The Old Forge', 'A. Tennant', 'R. & S. Vale'];

/** A job, its walls among it: what an overview has no need to read. */
export function firmJob(number: number): string {
  const chance = new Chance(number * 7919 + 13);
  const day = new Date(Date.UTC(2024, 0, 2 + (number % 700)));
  const street = STREETS[number % STREETS.length]!;
  return [
    'perpend 1',
    'use "../firm.perp"',
    '',
    `job "Wall at ${street}"`,
    `  ref     ${2024 + (number % 2)}-${String(number).padStart(5, '0')}`,
    `  client  "${CLIENTS[number % CLIENTS.length]}"`,
    `  date    ${dayText(day, 0)}`,
    '',
    ...walls(chance),
    ...recordOf(day, chance),
    '',
  ].join('\n');
}

function walls(chance: Chance): string[] {
  return Array.from({ length: chance.between(1, 4) }, (_, i) => [
    `wall w${i + 1} "Side ${i + 1}"`,
    `  length  ${chance.between(2, 12)}.45 m`,
    `  height  ${chance.between(8, 24)} courses`,
    '  bond    stretcher',
    '  left    toothed',
    '  note    "Face side to the garden."',
    '',
  ]).flat();
}

function recordOf(day: Date, chance: Chance): string[] {
  const price = chance.between(400, 6000) * 100 + chance.between(0, 99);
  const money = (pence: number) => `£${(pence / 100).toFixed(2)}`;
  const outcome = chance.next();
  if (outcome < 0.05) return [];
  const lines = ['record', `  sent      ${dayText(day, 1)} ${money(price)}`];
  if (outcome < 0.2) return lines;
  if (outcome < 0.35)
    return [...lines, `  lost      ${dayText(day, 9)} "Another firm was cheaper"`];
  lines.push(`  accepted  ${dayText(day, 6)}`);
  const deposit = Math.floor(price / 4);
  lines.push(
    `  invoiced  ${dayText(day, 7)} ${money(deposit)} as ${day.getUTCFullYear()}-1 "Deposit"`,
  );
  lines.push(`  paid      ${dayText(day, 12)} ${money(deposit)}`);
  const days = chance.between(1, 5);
  for (let i = 0; i < days; i++)
    lines.push(
      `  worked    ${dayText(day, 20 + i)} 2 people 7.5 h facework ${chance.between(330, 450)} bricks`,
    );
  if (outcome < 0.5) return lines;
  lines.push(`  invoiced  ${dayText(day, 30)} ${money(price - deposit)}`);
  if (outcome < 0.7) lines.push(`  paid      ${dayText(day, 52)} ${money(price - deposit)}`);
  return lines;
}

function dayText(day: Date, later: number): string {
  return new Date(day.getTime() + later * 86_400_000).toISOString().slice(0, 10);
}
