// The numbers of a car as they are typed at intake. What is typed stays as it is; what it says is read from it.

import type { DistanceUnit } from './types/DistanceUnit.ts';
import type { Odometer } from './types/Odometer.ts';
import type { Vehicle } from './types/Vehicle.ts';
import { inField } from './text.svelte.ts';
import { decimalOf, isUnread, wholeOf } from './written.ts';

export class CarNumbers {
  low = $state('');
  high = $state('');
  cylinders = $state('');
  warm = $state('');
  figure = $state('');
  distance = $state('');
  unit = $state<DistanceUnit>('km');

  /** Which of them are no numbers Steady can be sure of. */
  readonly unread = $derived({
    low: isUnread(this.low, wholeOf),
    high: isUnread(this.high, wholeOf),
    cylinders: isUnread(this.cylinders, wholeOf),
    warm: isUnread(this.warm, decimalOf),
    figure: isUnread(this.figure, decimalOf),
    distance: isUnread(this.distance, wholeOf),
  });

  constructor(vehicle: Vehicle, usual: DistanceUnit) {
    this.show(vehicle);
    this.distance = vehicle.odometer?.value.toString() ?? '';
    this.unit = vehicle.odometer?.unit ?? usual;
  }

  /** What does not change from visit to visit; the odometer is read anew. */
  show(vehicle: Vehicle): void {
    this.low = vehicle.idle_rpm?.[0].toString() ?? '';
    this.high = vehicle.idle_rpm?.[1].toString() ?? '';
    this.cylinders = vehicle.cylinders?.toString() ?? '';
    this.warm = inField(vehicle.warm_from_c ?? '');
    this.figure = inField(vehicle.maker_play_mm ?? '');
  }

  /** Both ends of the idle speed; one that is given alone is both. */
  idle(): [number, number] | null {
    const from = wholeOf(this.low) ?? wholeOf(this.high);
    const to = wholeOf(this.high) ?? wholeOf(this.low);
    // Half a range that was read must not stand in for what was not.
    const doubt = this.unread.low || this.unread.high;
    return doubt || from === null || to === null ? null : [from, to];
  }

  odometer(): Odometer | null {
    const value = wholeOf(this.distance);
    return value === null ? null : { value, unit: this.unit };
  }
}
