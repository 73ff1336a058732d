import type { VinHint } from "./VinHint";
export type VinRead = { vin: string, hint: VinHint | null, };
