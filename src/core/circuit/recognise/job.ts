/** What a part is there for. Words for each are in present/words. */
export const JOBS = [
  'inlet',
  'outlet',
  'fuse',
  'inrushLimiter',
  'surgeLimiter',
  'acrossMains',
  'mainsBleeder',
  'commonModeChoke',
  'mainsFilter',
  'droppingCapacitor',
  'mainsRectifier',
  'bulk',
  'bulkBleeder',
  'bulkFilter',
  'bulkDecoupling',
  'transformer',
  'switch',
  'controllerWithSwitch',
  'controller',
  'switchSense',
  'senseResistor',
  'driveResistor',
  'drivePath',
  'limitTransistor',
  'startResistor',
  'clampDiode',
  'clampStore',
  'clampZener',
  'snubber',
  'auxiliaryRectifier',
  'auxiliaryResistor',
  'auxiliaryStore',
  'freewheel',
  'outputChoke',
  'outputRectifier',
  'outputStore',
  'outputFilter',
  'outputBleeder',
  'outputSwitch',
  'lamp',
  'lampResistor',
  'optocoupler',
  'reference',
  'dividerUpper',
  'dividerLower',
  'voltageLeg',
  'ledResistor',
  'ledBypass',
  'compensation',
  'regulatingZener',
  'negotiation',
  'barrierCapacitor',
  'barrierResistor',
  'signalDecoupling',
  'link',
  'heatSink',
  'load',
] as const;
export type JobKey = (typeof JOBS)[number];

/** A job with the reason: the nets the part stands between, and the parts that make it so. */
export interface Job {
  readonly job: JobKey;
  /** Net ids. */
  readonly at: readonly string[];
  /** Part ids. */
  readonly with: readonly string[];
}

/** Gives parts their jobs; the first rule that knows a part has the last word. */
export class Jobs {
  readonly of = new Map<string, Job>();
  give(parts: Iterable<string>, job: JobKey, at: readonly string[], by: readonly string[] = []): void {
    for (const part of parts)
      if (!this.of.has(part)) this.of.set(part, { job, at: [...new Set(at)], with: by.filter((one) => one !== part) });
  }
  has(part: string): boolean {
    return this.of.has(part);
  }
}
