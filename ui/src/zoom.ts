// Looking at a picture closely: how large it is shown and which part of it, in pixels of the screen.

import type { Spot } from './marks.ts';

/** A width and a height, pixels. */
export interface Size {
  width: number;
  height: number;
}

/** `scale` screen pixels a picture pixel; `x` and `y` is where the picture's upper left corner is. */
export interface View {
  scale: number;
  x: number;
  y: number;
}

/** How far beyond one to one a picture can be enlarged. */
const BEYOND = 4;

/** One picture pixel on one dot of the screen, where the screen has `density` dots a pixel. */
export function oneToOne(density: number): number {
  return 1 / Math.max(density, 1);
}

/** The whole picture in the middle of the stage. */
export function whole(stage: Size, picture: Size): View {
  const scale = Math.min(stage.width / picture.width, stage.height / picture.height);
  return held({ scale, x: 0, y: 0 }, stage, picture);
}

/** Shows the picture at a scale, within its bounds, and keeps what is at `at` where it is. */
export function zoomTo(view: View, asked: number, at: Spot, stage: Size, picture: Size, density: number): View {
  const least = whole(stage, picture).scale;
  const scale = Math.min(Math.max(asked, least), Math.max(least, oneToOne(density) * BEYOND));
  const grown = scale / view.scale;
  return held({ scale, x: at[0] - (at[0] - view.x) * grown, y: at[1] - (at[1] - view.y) * grown }, stage, picture);
}

/** Pushes the picture along. */
export function pushed(view: View, dx: number, dy: number, stage: Size, picture: Size): View {
  return held({ ...view, x: view.x + dx, y: view.y + dy }, stage, picture);
}

/** The spot of the picture at a place of the stage. */
export function spotAt(view: View, x: number, y: number, picture: Size): Spot {
  const share = (place: number, corner: number, length: number): number => {
    const raw = (place - corner) / (length * view.scale);
    return Math.round(Math.min(1, Math.max(0, raw)) * 10_000) / 10_000;
  };
  return [share(x, view.x, picture.width), share(y, view.y, picture.height)];
}

/** No gap at an edge where the picture is larger than the stage; in the middle where it is smaller. */
function held(view: View, stage: Size, picture: Size): View {
  const along = (corner: number, room: number, length: number): number =>
    length <= room ? (room - length) / 2 : Math.min(0, Math.max(room - length, corner));
  return {
    scale: view.scale,
    x: along(view.x, stage.width, picture.width * view.scale),
    y: along(view.y, stage.height, picture.height * view.scale),
  };
}
