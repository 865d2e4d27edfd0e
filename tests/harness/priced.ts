import { JOB } from './walls';

/** One cost and nothing else, so that every price can be told by hand. */
export const oneCost = (cost = '£200'): string =>
  `${JOB}job "A"\ncost skip "Skip hire" 1 at ${cost}\n`;

/** The same with lines of its price. */
export const pricedAs = (lines: string, cost?: string): string => `${oneCost(cost)}price\n${lines}`;
