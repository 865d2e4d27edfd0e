/** Which numbers can be read one way and which two, shown by reading them. */
import { readNumber } from '../../shared/exact';
import { table } from './table';

const SAMPLES = [
  '1450',
  '7.4',
  '7,4',
  '1,450',
  '1.450',
  '0.450',
  '102.5',
  '1,450.00',
  '1.450,00',
  '12,500,000',
  '1450.125',
  "1'450",
];

export function numbers(): string {
  return table(
    ['written', 'read as'],
    SAMPLES.map((text) => [`\`${text}\``, reading(text)]),
  );
}

function reading(text: string): string {
  const read = readNumber(text);
  if (read.faulty === undefined) return read.value.toFixed();
  if (read.faulty === 'marks') return 'no number: these marks are not used';
  if (read.apart)
    return `an error: ${read.readings[0]}, or ${read.apart.join(' and ')}? The first is offered as a fix.`;
  return `an error: ${read.readings.join(' or ')}? Each is offered as a fix.`;
}
