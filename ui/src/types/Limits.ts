// The longest that fields take. Made from `model/limits.rs`.

export const LINE = 200;
export const REASON = 2000;
export const TYPED = 40;
export const LABEL = 40;
export const SPOTS = 200;
