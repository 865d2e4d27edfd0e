/**
 * Makes something of each stretch of one band after another, upward. What runs on from the band below keeps what
 * was made of it there, so that work goes with what changes at a level, not with all that stands there.
 */
export function carried<A extends { from: number }, B>(
  make: (each: A) => B,
): (band: readonly A[]) => B[] {
  let below: readonly A[] = [];
  let made: readonly B[] = [];
  return (band) => {
    let i = 0;
    const now = band.map((each) => {
      while (i < below.length && below[i]!.from < each.from) i++;
      return below[i] === each ? made[i]! : make(each);
    });
    below = band;
    made = now;
    return now;
  };
}
