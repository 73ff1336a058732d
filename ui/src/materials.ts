// Materials of housings and sleeves, as `data/bench/materials.toml` names them.

export const MATERIALS = [
  'mild-steel',
  'ductile-iron',
  'grey-iron',
  'bronze',
  'A356',
  'A383',
  '6061-T6',
  'AZ91D',
  'bearing-steel',
] as const;
