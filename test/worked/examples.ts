import { BULK_CAPACITOR } from './app-notes/bulk-capacitor.ts';
import { BULK_VALLEY } from './app-notes/bulk-valley.ts';
import { CABLE_DROP } from './app-notes/cable-drop.ts';
import { CAPACITOR_ON_THE_MAINS, CAPACITOR_ON_THE_MAINS_MISPRINT } from './app-notes/capacitor-on-the-mains.ts';
import { FLYBACK_BOARDS } from './app-notes/flyback-boards.ts';
import { FLYBACK_TRANSFORMERS } from './app-notes/flyback-transformers.ts';
import { FUSE_GATES } from './app-notes/fuse-gates.ts';
import { FUSES } from './app-notes/fuses.ts';
import { INRUSH } from './app-notes/inrush.ts';
import { LOSS_BUDGET } from './app-notes/loss-budget.ts';
import { REFERENCE_DESIGN } from './app-notes/reference-design.ts';
import { FEEDBACK_ALGEBRA, SHUNT_REFERENCE } from './app-notes/shunt-reference.ts';
import { SWITCH_AND_GAP } from './app-notes/switch-and-gap.ts';
import { MEASUREMENT_FORMULA } from './camera-makers/measurement-formula.ts';
import { CAPACITOR_LIFE } from './capacitor-makers/life.ts';
import { BOARD_ALGEBRA } from './closed-form/board.ts';
import { DISCHARGE } from './closed-form/discharge.ts';
import { INSULATION_ALGEBRA } from './closed-form/insulation.ts';
import { LABEL_ALGEBRA } from './closed-form/label.ts';
import { LOAD_ALGEBRA } from './closed-form/load.ts';
import { MAGNETICS_ALGEBRA } from './closed-form/magnetics.ts';
import { THERMAL_ALGEBRA } from './closed-form/thermal.ts';
import { TOUCH_ALGEBRA } from './closed-form/touch.ts';
import { GROOVES } from './connector-makers/grooves.ts';
import { BRITISH_PLUG } from './connector-makers/plugs.ts';
import { ISOLATION_AMPLIFIER } from './converter-makers/isolation-amplifier.ts';
import { TRANSIENTS_BY_CATEGORY, TRANSIENTS_MISPRINT } from './converter-makers/transients-by-category.ts';
import { TRANSFORMER_CELLS } from './core-catalogue/cells.ts';
import { JUNCTION } from './diode-makers/junction.ts';
import { BODY_IMPEDANCE } from './emc-pstc/body-impedance.ts';
import { BRIDGING_CAPACITOR } from './emc-pstc/bridging-capacitor.ts';
import { HOUSEHOLD } from './emc-pstc/household.ts';
import { SAFETY_CAPACITORS } from './emc-pstc/safety-capacitors.ts';
import { TOUCH_TEMPERATURE } from './emc-pstc/touch-temperature.ts';
import { ANNEX_II } from './eu-2019-1782/annex-ii.ts';
import { CODE_OF_CONDUCT } from './eu-2019-1782/code-of-conduct.ts';
import { NO_LOAD } from './eu-2019-1782/no-load.ts';
import { PREFERRED_SERIES } from './iec-60664-1/preferred-series.ts';
import { TABLE_A2 } from './iec-60664-1/table-a2.ts';
import { TABLE_F1 } from './iec-60664-1/table-f1.ts';
import { TABLE_F2 } from './iec-60664-1/table-f2.ts';
import { TABLE_F4 } from './iec-60664-1/table-f4.ts';
import { TABLE_F8 } from './iec-60664-1/table-f8.ts';
import { BARRIER_CAPACITORS } from './iec-62368-1/barrier-capacitors.ts';
import { CHARGED_CAPACITORS } from './iec-62368-1/charged-capacitors.ts';
import { ENERGY_SOURCES, ENERGY_SOURCES_MISPRINT } from './iec-62368-1/energy-sources.ts';
import { MATERIAL_GROUPS } from './iec-62368-1/material-groups.ts';
import { TABLES_10_AND_14 } from './iec-62368-1/tables-10-and-14.ts';
import { TOUCH_VOLTAGE } from './iec-62368-1/touch-voltage.ts';
import { HOUSEHOLD_DISTANCES } from './magnetics-library/household.ts';
import { OVERVOLTAGE, TABLE_12_MISPRINT } from './magnetics-library/overvoltage.ts';
import { LIBRARY_TABLES } from './magnetics-library/strength.ts';
import { INSULATION_LINES } from './meter-makers/insulation.ts';
import { MINIMUM_AIR_DISTANCE } from './railway/minimum-air-distance.ts';
import { RULE_OF_THREE } from './statistics/rule-of-three.ts';
import { ADAPTER_60950 } from './test-reports/adapter-60950.ts';
import { ADDITIONAL_60950 } from './test-reports/additional-60950.ts';
import { COMPONENT_LIMITS } from './test-reports/component-limits.ts';
import { IGNITION } from './test-reports/ignition.ts';
import { MAINS_PRODUCT } from './test-reports/mains-product-62368.ts';
import { STRENGTH } from './test-reports/strength.ts';
import { PHONE_SUPPLY_MISPRINT, VOLTAGE_WINDOWS } from './usb/voltage-windows.ts';
import { LEAD_DROP } from './wire-handbook/lead-drop.ts';
import { SKIN_AND_RING } from './wire-handbook/skin-and-ring.ts';
import type { Misprint, WorkedExample } from './worked-example.ts';

/** Every printed figure that our formulas and tables are held against. */
export const WORKED: readonly WorkedExample[] = [
  ...ADAPTER_60950,
  ...ADDITIONAL_60950,
  ...ANNEX_II,
  ...BARRIER_CAPACITORS,
  ...BRIDGING_CAPACITOR,
  ...CABLE_DROP,
  ...BOARD_ALGEBRA,
  ...BULK_CAPACITOR,
  ...BULK_VALLEY,
  ...CAPACITOR_LIFE,
  ...CAPACITOR_ON_THE_MAINS,
  ...CHARGED_CAPACITORS,
  ...COMPONENT_LIMITS,
  ...ENERGY_SOURCES,
  ...FEEDBACK_ALGEBRA,
  ...FLYBACK_BOARDS,
  ...FLYBACK_TRANSFORMERS,
  ...FUSES,
  ...GROOVES,
  ...INRUSH,
  ...INSULATION_ALGEBRA,
  ...INSULATION_LINES,
  ...ISOLATION_AMPLIFIER,
  ...JUNCTION,
  ...LABEL_ALGEBRA,
  ...LEAD_DROP,
  ...LOAD_ALGEBRA,
  ...LOSS_BUDGET,
  ...MAGNETICS_ALGEBRA,
  ...MAINS_PRODUCT,
  ...MATERIAL_GROUPS,
  ...MEASUREMENT_FORMULA,
  ...MINIMUM_AIR_DISTANCE,
  ...NO_LOAD,
  ...OVERVOLTAGE,
  ...PREFERRED_SERIES,
  ...REFERENCE_DESIGN,
  ...RULE_OF_THREE,
  ...SHUNT_REFERENCE,
  ...SKIN_AND_RING,
  ...SWITCH_AND_GAP,
  ...TABLES_10_AND_14,
  ...TABLE_A2,
  ...TABLE_F1,
  ...TABLE_F2,
  ...TABLE_F4,
  ...TABLE_F8,
  ...THERMAL_ALGEBRA,
  ...TOUCH_ALGEBRA,
  ...TOUCH_TEMPERATURE,
  ...TRANSFORMER_CELLS,
  ...TRANSIENTS_BY_CATEGORY,
  ...VOLTAGE_WINDOWS,
  ...BODY_IMPEDANCE,
  ...DISCHARGE,
  ...HOUSEHOLD_DISTANCES,
  ...BRITISH_PLUG,
  ...CODE_OF_CONDUCT,
  ...FUSE_GATES,
  ...HOUSEHOLD,
  ...IGNITION,
  ...LIBRARY_TABLES,
  ...SAFETY_CAPACITORS,
  ...STRENGTH,
  ...TOUCH_VOLTAGE,
];

/** Printed figures that are wrong. */
export const MISPRINTED: readonly Misprint[] = [
  ...CAPACITOR_ON_THE_MAINS_MISPRINT,
  ...ENERGY_SOURCES_MISPRINT,
  ...PHONE_SUPPLY_MISPRINT,
  ...TABLE_12_MISPRINT,
  ...TRANSIENTS_MISPRINT,
];
