/** Outlines of what is pointed at or marked, and where they lie on the board. */
import { n } from './paths';
import type { Rectangle, Stop } from './stops';

/** Where a drawing lies on its board, however that is scrolled, pixels. */
export function svgPlace(svg: Element, board: HTMLElement) {
  const [own, round] = [svg.getBoundingClientRect(), board.getBoundingClientRect()];
  return {
    offsetLeft: own.left - round.left + board.scrollLeft,
    offsetTop: own.top - round.top + board.scrollTop,
  };
}

export function pathOf({ x, y, width, height, corners }: Stop): string {
  if (!corners) return `M${n(x)} ${n(y)}h${n(width)}v${n(height)}h${n(-width)}z`;
  const points: string[] = [];
  for (let i = 0; i < corners.length; i += 2)
    points.push(`${n(corners[i]! / 100)} ${n(corners[i + 1]! / 100)}`);
  return `M${points.join('L')}z`;
}

/** The smallest rectangle round all of them. */
export function roundAll(stops: readonly Stop[]): Rectangle {
  const x = Math.min(...stops.map((stop) => stop.x));
  const y = Math.min(...stops.map((stop) => stop.y));
  const right = Math.max(...stops.map((stop) => stop.x + stop.width));
  const bottom = Math.max(...stops.map((stop) => stop.y + stop.height));
  return { x, y, width: right - x, height: bottom - y };
}
