/** One printed figure, where it stands, and what goes in. Inputs are SI by input name; a table is entered with `key`. */
interface Printed {
  readonly publication: string;
  readonly edition?: string;
  /** Clause, table, page, message: what a reader needs to find the figure. */
  readonly place: string;
  /**
   * - standard: a standard or regulation prints it (read there or in a copy that is named in `place`)
   * - publication: a report, data sheet, application note or list prints it
   * - closed-form: nobody prints it; it follows by schoolbook algebra from the inputs
   * - program: another program computes it
   * - own: worked out here
   */
  readonly origin: 'standard' | 'publication' | 'closed-form' | 'program' | 'own';
  readonly inputs: Readonly<Record<string, number | string>>;
  readonly printed: number;
  /** As printed: "mm", "mA", "°C", "%", or an SI unit. */
  readonly unit: string;
  /** In the unit of `printed`. */
  readonly tolerance: number;
  /** Why this tolerance. */
  readonly because: string;
  /** What of our result the printed figure states, when it is not the result itself. */
  readonly states?: (result: number) => number;
}

export type WorkedExample = Printed &
  (
    | {
        /** Id of a formula. */
        readonly formula: string;
      }
    | {
        /** Id of a table and its column: "iec-62368-1/2018/altitude/factor". */
        readonly table: string;
      }
  );

/** A figure that was printed and is wrong: what we compute must stay away from it. */
export type Misprint = WorkedExample & { readonly wrongBecause: string };

export const CELL = 'a printed cell is exact';
export const HALF_OF_LAST_DIGIT = 'half of the last printed digit';
