/** Every property runs over the same cases each time; another seed is another run, not another test. */
export const SEED = 20_261_125;
export const FEW = 300;
export const MANY = 3000;
