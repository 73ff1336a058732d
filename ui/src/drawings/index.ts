// Which drawing belongs to which step. All are 320 by 150 units, drawn in the styles of drawings.css.

import type { Component } from 'svelte';
import type { Support } from '../types/Support.ts';
import AirLeak from './AirLeak.svelte';
import AirLeakByEar from './AirLeakByEar.svelte';
import ClutchPedal from './ClutchPedal.svelte';
import Coupling from './Coupling.svelte';
import Creep from './Creep.svelte';
import EngagementReset from './EngagementReset.svelte';
import EngagementSetting from './EngagementSetting.svelte';
import FarEnd from './FarEnd.svelte';
import HousingLook from './HousingLook.svelte';
import IdleNoise from './IdleNoise.svelte';
import IdleRaised from './IdleRaised.svelte';
import IdleSpeed from './IdleSpeed.svelte';
import Misfire from './Misfire.svelte';
import NeutralBuzz from './NeutralBuzz.svelte';
import PlayLateral from './PlayLateral.svelte';
import PlayVertical from './PlayVertical.svelte';
import RoadSpeed from './RoadSpeed.svelte';
import RunningStop from './RunningStop.svelte';
import Selector from './Selector.svelte';
import ShaftLook from './ShaftLook.svelte';
import ShieldMounts from './ShieldMounts.svelte';
import SupportLook from './SupportLook.svelte';
import TubeOpen from './TubeOpen.svelte';
import TurnByHand from './TurnByHand.svelte';

/** What a drawing is told: how this car holds its bearing. */
export interface DrawingProps {
  support: Support;
}

const plain: Record<string, Component> = {
  'road-speed-vibration': RoadSpeed,
  'road-drive': RoadSpeed,
  'road-coast': RoadSpeed,
  'road-neutral': RoadSpeed,
  'road-bend': RoadSpeed,
  'idle-speed': IdleSpeed,
  'idle-noise': IdleNoise,
  'idle-raise-effect': IdleRaised,
  'clutch-pedal-effect': ClutchPedal,
  'selector-effect': Selector,
  'misfire-evidence': Misfire,
  'air-leak-by-ear': AirLeakByEar,
  'air-leak-test': AirLeak,
  'engagement-setting': EngagementSetting,
  'neutral-2500-buzz': NeutralBuzz,
  'running-stop': RunningStop,
  'creep-noise': Creep,
  'engagement-reset-effect': EngagementReset,
  'support-look': SupportLook,
  'tube-open-check': TubeOpen,
  'play-far-end': FarEnd,
  'coupling-look': Coupling,
  'shaft-look': ShaftLook,
  'shield-and-mounts': ShieldMounts,
};

const bearing: Record<string, Component<DrawingProps>> = {
  'housing-look': HousingLook,
  'play-vertical': PlayVertical,
  'play-lateral': PlayLateral,
  'turn-by-hand': TurnByHand,
};

/** The drawing of a step that looks the same on every car. */
export function drawingOf(step: string): Component | undefined {
  return plain[step];
}

/** The drawing of a step that shows how this car holds its bearing. */
export function bearingDrawingOf(step: string): Component<DrawingProps> | undefined {
  return bearing[step];
}

/** The steps that have a drawing. */
export const drawn: readonly string[] = [...Object.keys(plain), ...Object.keys(bearing)];
