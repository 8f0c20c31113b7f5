/** Circuits of the demo units as their lines. Invented, in the ordinary manner of such boards. */

/** 12 V from a controller, an optocoupler and a shunt reference. */
export const FELL_BOARD = `
mains: line, neutral
output: out-plus, out-minus
J1: L=line, N=neutral
F1: line, fused
CX1: fused, neutral
R1: fused, neutral
RT1: fused, limited
BD1 MB6S 600V: ~1=limited, ~2=neutral, +=hv-plus, -=hv-minus
C1 (electrolytic): hv-plus, hv-minus
R2 1M: hv-plus, supply
R3 100k: hv-plus, clamp
C2 (ceramic) 2n2 1kV: hv-plus, clamp
D1 FR107: drain, clamp
T1 P 72: hv-plus, drain
T1 A 14: hv-minus, aux
T1 S 12: out-minus, sec
D3 FR103: aux, supply
C4 (electrolytic) 10uF 50V: supply, hv-minus
Q1 4N65: G=gate, D=drain, S=sense
R4 22R: gate, drive
R6 0R62 1W: sense, hv-minus
U1 (controller): VDD=supply, FB=feedback, DRV=drive, CS=sense, GND=hv-minus
C6 (ceramic) 1nF: feedback, hv-minus
U2 (optocoupler) !: A=led, K=cathode, C=feedback, E=hv-minus
D5: sec, out-plus
C7 (electrolytic) 470uF: out-plus, out-minus
R5 470R: out-plus, led
R9 1k: led, cathode
R7 38k3 1%: out-plus, ref
R8 10k 1%: ref, out-minus
R10 4k7: cathode, comp
C10 (ceramic) 100nF: comp, ref
U3 431A: R=ref, A=out-minus, K=cathode
C5 (ceramic) !: hv-minus, out-minus
J2: +=out-plus, -=out-minus
`;

/** 5 V from two transistors, a single diode and a Zener on a negative auxiliary rail; no part that opens. */
export const BECK_BOARD = `
mains: line, neutral
output: out-plus, out-minus
J1: L=line, N=neutral
D1 1N4007 1000V: line, hv-plus
W1: neutral, hv-minus
C1 (electrolytic): hv-plus, hv-minus
R1 1M: hv-plus, base
Q1 (bipolar) 13001: B=base, C=drain, E=emitter
R2 2R2: emitter, hv-minus
Q2 8050: B=sense, C=base, E=hv-minus
R3 1k: emitter, sense
R5 150k: hv-plus, clamp
C5 (ceramic) 1nF 1kV: hv-plus, clamp
D3 FR107: drain, clamp
T1 P 110: hv-plus, drain
T1 A 9: aux, hv-minus
T1 S 9: out-minus, sec
R4 220R: aux, drive
C2 (ceramic) 4n7: drive, base
D2 1N4148: negative, aux
C4 (electrolytic) 22uF 25V: hv-minus, negative
ZD1 5V6: negative, base
D5: sec, out-plus
C7 (electrolytic) 220uF: out-plus, out-minus
R6 1k: out-plus, lamp
LED1: lamp, out-minus
C3 (ceramic) !: hv-minus, out-minus
J2: +=out-plus, -=out-minus
`;

/** 5 to 20 V: a negotiation chip joins one of three legs to the divider, and opens the way to the socket. */
export const TARN_BOARD = `
mains: line, neutral
output: out-plus, out-minus
J1: L=line, N=neutral
F1: line, fused
CX1: fused, neutral
R1: fused, neutral
LF1: 1=fused, 2=filtered, 3=neutral, 4=neutral-2
RT1: filtered, limited
BD1 KBP206 600V: ~1=limited, ~2=neutral-2, +=hv-plus, -=hv-minus
C1 (electrolytic): hv-plus, hv-minus
R2 1M5: hv-plus, supply
R3 150k: hv-plus, clamp
C2 (ceramic) 2n2 1kV: hv-plus, clamp
D1 FR107: drain, clamp
T1 P 40: hv-plus, drain
T1 A 8: hv-minus, aux
T1 S 7: out-minus, sec
D3 FR103: aux, rough
R4 4R7: rough, supply
C4 (electrolytic) 22uF 50V: supply, hv-minus
Q1 7N65: G=gate, D=drain, S=sense
R5 22R: gate, drive
R6 0R33 1W: sense, hv-minus
U1 (controller): VDD=supply, FB=feedback, DRV=drive, CS=sense, GND=hv-minus
C6 (ceramic) 1nF: feedback, hv-minus
U2 (optocoupler) !: A=led, K=cathode, C=feedback, E=hv-minus
D5: sec, out-plus
R11 22R: sec, damp
C11 (ceramic) 1nF: damp, out-plus
C7 (electrolytic) 680uF: out-plus, out-minus
R7 1k: out-plus, led
R8 1k: led, cathode
R12 30k 1%: out-plus, ref
R13 30k 1%: ref, out-minus
R14 18k7 1%: ref, leg-9
R15 7k5 1%: ref, leg-15
R16 4k99 1%: ref, leg-20
C10 (ceramic) 22nF: cathode, ref
U3 431B: R=ref, A=out-minus, K=cathode
U4 (negotiation): IN=out-plus, S1=leg-9, S2=leg-15, S3=leg-20, SW=open, CC1=cc1, CC2=cc2, GND=out-minus
Q3 (mosfet): G=open, D=out-plus, S=vbus
C9 (ceramic) !: hv-minus, out-minus
J2: +=vbus, -=out-minus, CC1=cc1, CC2=cc2
`;
