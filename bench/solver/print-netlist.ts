import { bodyNetworkParts } from '../../src/core/solver/body-network.ts';
import type { Controller, Optocoupler, Part, Switch, Transformer } from '../../src/core/solver/circuit.ts';
import { type Described, JUNCTIONS } from './adapter.ts';
import { printController } from './print-controller.ts';

/**
 * The same circuit for ngspice, the general-purpose reference: its own exponential diodes and bipolar transistors, smooth sources for
 * what has corners, and an analogue latch for the controller. Order of the netlist is the order of the parts.
 */
export interface NetlistOptions {
  readonly stopS: number;
  /** Method, tolerances. */
  readonly options: string;
  readonly longestStepS: number;
  readonly fromS: number;
  /** Measurements by name: kind, and an expression of node voltages and branch currents. */
  readonly measures: readonly {
    readonly name: string;
    readonly kind: 'AVG' | 'RMS' | 'MIN' | 'MAX';
    readonly of: string;
    readonly fromS?: number;
  }[];
  /** What a controller remembers at the start, by its own names. */
  readonly memory?: Readonly<Record<string, number>>;
  /** Extra lines, after the parts. */
  readonly more?: readonly string[];
}

const SMALL_F = 1e-9; // below, a capacitor stands without its series resistance, which there is smaller than any time step can see
const GATE = { ohms: 3e3, farads: 10e-12 } as const; // 30 ns from comparator to switch

function netName(net: string, earth: string): string {
  return net === earth ? '0' : net.replace(/[^a-zA-Z0-9]/g, '_');
}

export function printNetlist({ circuit, junctions }: Described, choice: NetlistOptions): string {
  const lines: string[] = [`* ${circuit.title}`];
  const used = new Set<string>();
  const n = (net: string): string => netName(net, circuit.earth);
  const model = (ref: string): string => {
    const name = junctions[ref];
    if (name === undefined) throw new Error(`${ref} has no junction law for the reference program`);
    used.add(name);
    return name;
  };
  let counter = 0;
  const capacitor = (ref: string, a: string, b: string, farads: number, ohms: number, initialV: number): void => {
    counter += 1;
    const name = `${ref}_${counter}`;
    if (farads < SMALL_F) lines.push(`C${name} ${a} ${b} ${farads} IC=${initialV}`);
    else lines.push(`C${name} ${a} x${name} ${farads} IC=${initialV}`, `RE${name} x${name} ${b} ${ohms}`);
  };
  const transformer = ({ ref, windings, magnetisingH, coreOhms }: Transformer): void => {
    const ratio = windings.map(({ turns }) => turns / windings[0]!.turns);
    const own = windings.map(({ leakageH }, i) => magnetisingH * ratio[i]! * ratio[i]! + leakageH);
    windings.forEach(({ pins, ohms }, i) => {
      lines.push(`L${ref}_${i} ${n(pins[0])} y${ref}_${i} ${own[i]!} IC=0`, `RW${ref}_${i} y${ref}_${i} ${n(pins[1])} ${ohms}`);
    });
    for (let i = 0; i < windings.length; i += 1)
      for (let j = i + 1; j < windings.length; j += 1)
        lines.push(`K${ref}_${i}${j} L${ref}_${i} L${ref}_${j} ${(magnetisingH * ratio[i]! * ratio[j]!) / Math.sqrt(own[i]! * own[j]!)}`);
    if (coreOhms !== undefined) lines.push(`RC${ref} ${n(windings[0]!.pins[0])} ${n(windings[0]!.pins[1])} ${coreOhms}`);
  };
  const smooth = (a: string, b: string): string => `sn(${a},${b})`;
  const optocoupler = (part: Optocoupler): void => {
    const { ref, led, transistor, forward, collectorA, poleHz, saturationOhms } = part;
    const share = collectorA[1]! / forward[1]![0];
    if (collectorA.some((amps, index) => Math.abs(amps / forward[index]![0] - share) > 1e-9))
      throw new Error('the printed optocoupler has one ratio');
    lines.push(
      `D${ref} ${n(led[0])} x${ref} ${model(ref)}`,
      `VS${ref} x${ref} ${n(led[1])} 0`,
      `BP${ref} p${ref} 0 V=${share}*I(VS${ref})`,
      `RP${ref} p${ref} q${ref} 1k`,
      `CP${ref} q${ref} 0 ${1 / (2 * Math.PI * poleHz * 1e3)} IC=0`,
      `B${ref} ${n(transistor[0])} ${n(transistor[1])} I=${smooth(`V(q${ref})`, `V(${n(transistor[0])},${n(transistor[1])})/${saturationOhms}`)}`,
    );
  };
  const fet = ({ ref, pins, onOhms, outputF }: Switch): void => {
    const [d, s] = pins.map(n);
    const ground = n(circuit.parts.find((one): one is Controller => one.kind === 'controller' && one.drives === ref)?.ground ?? pins[1]);
    lines.push(
      `RG${ref} q${ref} g${ref} ${GATE.ohms}`,
      `CG${ref} g${ref} ${ground} ${GATE.farads} IC=0`,
      `B${ref} ${d} ${s} I=V(${d},${s})*(1e-9+${1 / onOhms}/(1+exp(-(V(g${ref},${ground})-0.5)*40)))`,
      `DB${ref} ${s} ${d} ${model(ref)}`,
    );
    capacitor(ref, d!, s!, outputF, 1, 0);
  };
  const add = (part: Part): void => {
    switch (part.kind) {
      case 'resistor':
        counter += 1;
        lines.push(`R${part.ref}_${counter} ${n(part.pins[0])} ${n(part.pins[1])} ${part.ohms}`);
        break;
      case 'load':
        if (!('ohms' in part.draw)) throw new Error('the printed load is a resistance');
        lines.push(`R${part.ref} ${n(part.pins[0])} ${n(part.pins[1])} ${part.draw.ohms}`);
        break;
      case 'capacitor':
        capacitor(part.ref, n(part.pins[0]), n(part.pins[1]), part.farads, part.ohms, part.initialV ?? 0);
        break;
      case 'inductor':
        lines.push(
          `L${part.ref} ${n(part.pins[0])} y${part.ref} ${part.henries} IC=${part.initialA ?? 0}`,
          `RW${part.ref} y${part.ref} ${n(part.pins[1])} ${part.ohms}`,
        );
        break;
      case 'diode':
        lines.push(`D${part.ref} ${n(part.pins[0])} ${n(part.pins[1])} ${model(part.ref)}`);
        if (part.junctionF !== undefined) capacitor(part.ref, n(part.pins[0]), n(part.pins[1]), part.junctionF, 1, 0);
        break;
      case 'transformer':
        transformer(part);
        break;
      case 'switch':
        fet(part);
        break;
      case 'bipolar':
        lines.push(`Q${part.ref} ${n(part.collector)} ${n(part.base)} ${n(part.emitter)} NPN${part.ref}`);
        break;
      case 'shuntRegulator': {
        const [k, a, r] = [part.cathode, part.anode, part.reference].map(n);
        const drive = `${part.siemens}*(V(${r},${a})-${part.refV})`;
        lines.push(`B${part.ref} ${k} ${a} I=sp(${smooth(drive, `(V(${k},${a})-${part.leastV})/${part.leastOhms}`)})`);
        break;
      }
      case 'optocoupler':
        optocoupler(part);
        break;
      case 'dcSource':
        lines.push(
          `V${part.ref} v${part.ref} ${n(part.pins[1])} ${part.volts}`,
          `RV${part.ref} v${part.ref} ${n(part.pins[0])} ${part.ohms}`,
        );
        break;
      case 'mains':
        lines.push(
          `V${part.ref} v${part.ref} ${n(part.pins[1])} SIN(0 ${Math.SQRT2 * part.rmsV} ${part.hertz} 0 0 ${part.phaseDeg})`,
          `RV${part.ref} v${part.ref} ${n(part.pins[0])} ${part.ohms}`,
        );
        break;
      case 'bodyNetwork':
        for (const one of bodyNetworkParts(part)) add(one);
        break;
      case 'controller':
        lines.push(...printController(part, n, { memory: choice.memory ?? {}, measured: choice.measures.map(({ of }) => of).join(' ') }));
        break;
      default:
        throw new Error(`the reference program is not told how to print a ${part.kind}`);
    }
  };
  for (const part of circuit.parts) add(part);
  // corners rounded over 10 µA or 10 µV
  lines.push('.func sn(a,b) {0.5*(a+b-sqrt((a-b)*(a-b)+1e-10))}', '.func sp(a) {0.5*(a+sqrt(a*a+1e-10))}');
  for (const name of used) {
    const { saturationA, ideality, seriesOhms } = JUNCTIONS[name as keyof typeof JUNCTIONS];
    lines.push(`.model ${name} D(IS=${saturationA} N=${ideality} RS=${seriesOhms})`);
  }
  lines.push(
    ...(choice.more ?? []),
    `.options ${choice.options}`,
    `.tran ${choice.longestStepS} ${choice.stopS} 0 ${choice.longestStepS} uic`,
  );
  for (const { name, kind, of, fromS } of choice.measures)
    lines.push(`BM${name} m${name} 0 V=${of}`, `.meas tran ${name} ${kind} V(m${name}) from=${fromS ?? choice.fromS} to=${choice.stopS}`);
  lines.push(`.save ${choice.measures.map(({ name }) => `V(m${name})`).join(' ')}`);
  lines.push('.end', '');
  return lines.join('\n');
}
