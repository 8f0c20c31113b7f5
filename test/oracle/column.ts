/** One column of a published table: key and cell of each row, as printed. */
export type Column = readonly (readonly [key: number, cell: number])[];
