export const tray = {};
