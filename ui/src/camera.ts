// The camera is another app, and a phone short of memory closes this one while a photo is taken. A mark is
// left while the camera is out; where it is still there at a fresh start, the photo never came.

const STORE = 'steady.camera';

const lost = localStorage.getItem(STORE);
localStorage.removeItem(STORE);

/** Marks that the camera was called for a step of a visit. */
export function cameraOut(visit: string, step: string): void {
  try {
    localStorage.setItem(STORE, `${visit} ${step}`);
  } catch {
    return;
  }
}

/** The camera gave a photo, or was closed without one. */
export function cameraBack(): void {
  localStorage.removeItem(STORE);
}

/** Whether the app was closed while the camera was out for this step. */
export function photoLost(visit: string, step: string): boolean {
  return lost === `${visit} ${step}`;
}
