// Clearance groups of a bearing (ISO 5753-1), smallest first.

import type { ClearanceGroup } from './types/ClearanceGroup.ts';

export const CLEARANCE_GROUPS: ClearanceGroup[] = ['C2', 'CN', 'C3', 'C4'];
