/** The top of a wall at a corner, mm. */
export interface CornerTop {
  /** Of the wall over all. */
  length: number;
  /** Of its top there, above the ground at the corner. */
  high: number;
  /** Through the wall. */
  thick: number;
  /** Through its coping; 0 where it has none. */
  deep: number;
}

/** Where a coping ends at a corner: mm in from the end of its wall, and whether there is a joint. */
export interface CornerEnd {
  inset: number;
  joint: 0 | 1;
}

/** Heights and lengths nearer than this are the same, mm. */
const SAME = 1;

/**
 * Where two walls meet in a corner one coping runs through to the end and the other butts against its side, so
 * that the corner is covered once (common practice; no mitres are cut). The longer wall’s runs through; of two
 * as long, that of the wall which `first` says. A lower top butts against the face of the higher wall.
 */
export function copingAtCorner(own: CornerTop, other: CornerTop, first: boolean): CornerEnd {
  const through = { inset: 0, joint: 0 } as const;
  if (own.high > other.high + SAME) return through;
  if (own.high < other.high - SAME) return { inset: other.thick, joint: 1 };
  if (other.deep <= 0 || own.length > other.length + SAME) return through;
  if (first && own.length > other.length - SAME) return through;
  // A coping wider than its wall reaches as far over both faces.
  return { inset: (other.thick + other.deep) / 2, joint: 1 };
}

/**
 * Where a wall runs into the face of another, that one’s coping goes on past it, and its own stops at the face; where that
 * coping stands out over it, at the side of the coping. Over a lower wall, and over a top without a coping, it ends free.
 */
export function copingAtTee(own: CornerTop, other: CornerTop): CornerEnd {
  if (own.high < other.high - SAME) return { inset: 0, joint: 1 };
  if (own.high > other.high + SAME || other.deep <= 0) return { inset: 0, joint: 0 };
  return { inset: Math.max(0, (other.deep - other.thick) / 2), joint: 1 };
}
