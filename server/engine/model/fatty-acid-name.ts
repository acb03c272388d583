/** Short name of a fatty acid as a pattern: carbons, double bonds, where needed the place of the first (n3) or a hydroxyl (-OH). */
export const FATTY_ACID_NAME = '^C([4-9]|[12][0-9]|3[0-2]):[0-6](n[0-9]{1,2})?(-OH)?$'
