export const checks = {};
