/** Where an axle's guides put it: turn right-hand about vehicle left, radians; forward shift, metres. Written over at each call. */
export interface GuidePlace {
  turn: number;
  forward: number;
  /** False where the guides cannot reach; turn and forward then say nothing. */
  reached: boolean;
}

/** Room for a place: the axle as gauged. */
export const newGuidePlace = (): GuidePlace => ({ turn: 0, forward: 0, reached: true });
