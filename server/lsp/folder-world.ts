/** The files of the open folders for questions about names across them. */
import type { World } from '../engine/ide/sight';
import { worldOf } from '../engine/ide/world';
import type { Session } from './session';
import type { Stretch } from './stretch';

/** @throws Stopped as the stretch does */
export async function worldFor(session: Session, stretch: Stretch): Promise<World> {
  const { folder, lent, store } = session;
  const files = await folder.list(stretch);
  const around = {
    store,
    glance: (file: string) => folder.glance(file),
    text: (file: string) => folder.text(file),
    source: (file: string) => folder.skimmed(file),
    resolve: (from: string, path: string) => lent.files.resolve(from, path),
  };
  return stretch.through(worldOf(files, around));
}
