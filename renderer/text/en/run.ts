export const run = {};
