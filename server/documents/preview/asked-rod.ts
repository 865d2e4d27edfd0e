/** What a gauge rod is asked for its parts: courses come from what gives the gauge, levels from what stands at them. */
import type { Asked, SetAsked } from './asked';
import { fromOfLevel } from './figures';
import type { Origins } from './origins';

export function rodAsked(origins: Origins): SetAsked {
  const gauge = origins.joints();
  const asked: Asked = {
    pieces: () => () => origins.own('height', 'top'),
    course: () => undefined,
    stroke: ({ style, from }) => (style === 'rod' ? gauge : fromOfLevel(origins, from.y)),
    shape: () => gauge,
    label: ({ at }) => (at === undefined ? gauge : fromOfLevel(origins, at)),
    chain: () => gauge,
    rod: () => gauge,
  };
  return { title: () => origins.own('height', 'top'), caption: () => gauge, of: () => asked };
}
