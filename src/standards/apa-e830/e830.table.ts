/** Check rows of note E830, typed apart from the tables in the code: a digit changed in one shows. */
const print = { source: 'table text in permit archive', origin: 'published' } as const;
const recall = { source: 'recalled', origin: 'memory' } as const;

/** Table 1. */
export const lateralSteelRows = [
  { fastener: 'wood screw', number: 8, thread: 0.5, ultimate: 415, estimate: false, ...print },
  { fastener: 'wood screw', number: 12, thread: 0.5, ultimate: 590, estimate: false, ...print },
  { fastener: 'sheet metal screw', number: 8, thread: 0.5, ultimate: 465, estimate: false, ...print },
  { fastener: 'sheet metal screw', number: 8, thread: 0.625, ultimate: 500, estimate: false, ...print },
  { fastener: 'sheet metal screw', number: 12, thread: 0.625, ultimate: 705, estimate: false, ...print },
  { fastener: 'sheet metal screw', number: 12, thread: 0.75, ultimate: 715, estimate: false, ...print },
  { fastener: 'wood screw', number: 10, thread: 0.5, ultimate: 500, estimate: true, ...print },
  { fastener: 'sheet metal screw', number: 10, thread: 0.5, ultimate: 565, estimate: true, ...print },
  { fastener: 'sheet metal screw', number: 10, thread: 0.625, ultimate: 600, estimate: true, ...print },
  { fastener: 'sheet metal screw', number: 10, thread: 0.75, ultimate: 655, estimate: true, ...print },
] as const;

/** Table 2. */
export const lateralFramingRows = [
  { framing: '0.080 in aluminum', plywood: 0.25, screw: '8', ultimate: 330, ...print },
  { framing: '0.080 in aluminum', plywood: 0.25, screw: '10', ultimate: 360, ...print },
  { framing: '0.080 in aluminum', plywood: 0.25, screw: '12', ultimate: 390, ...print },
  { framing: '0.080 in aluminum', plywood: 0.25, screw: '1/4-20', ultimate: 590, ...print },
  { framing: '0.080 in aluminum', plywood: 0.5, screw: '8', ultimate: 630, ...print },
  { framing: '0.080 in aluminum', plywood: 0.5, screw: '10', ultimate: 850, ...print },
  { framing: '0.080 in aluminum', plywood: 0.5, screw: '14', ultimate: 920, ...print },
  { framing: '0.080 in aluminum', plywood: 0.5, screw: '1/4-20', ultimate: 970, ...print },
  { framing: '0.080 in aluminum', plywood: 0.75, screw: '8', ultimate: 910, ...print },
  { framing: '0.080 in aluminum', plywood: 0.75, screw: '10', ultimate: 930, ...print },
  { framing: '0.080 in aluminum', plywood: 0.75, screw: '12', ultimate: 1250, ...print },
  { framing: '0.080 in aluminum', plywood: 0.75, screw: '14', ultimate: 1330, ...print },
  { framing: '0.080 in aluminum', plywood: 0.75, screw: '1/4-20', ultimate: 1440, ...print },
  { framing: '0.078 in galvanized steel', plywood: 0.25, screw: '8', ultimate: 360, ...print },
  { framing: '0.078 in galvanized steel', plywood: 0.25, screw: '10', ultimate: 380, ...print },
  { framing: '0.078 in galvanized steel', plywood: 0.25, screw: '12', ultimate: 400, ...print },
  { framing: '0.078 in galvanized steel', plywood: 0.25, screw: '14', ultimate: 410, ...print },
  { framing: '0.078 in galvanized steel', plywood: 0.25, screw: '1/4-20', ultimate: 650, ...print },
  { framing: '0.078 in galvanized steel', plywood: 0.5, screw: '8', ultimate: 700, ...print },
  { framing: '0.078 in galvanized steel', plywood: 0.5, screw: '12', ultimate: 900, ...print },
  { framing: '0.078 in galvanized steel', plywood: 0.5, screw: '14', ultimate: 920, ...print },
  { framing: '0.078 in galvanized steel', plywood: 0.5, screw: '1/4-20', ultimate: 970, ...print },
  { framing: '0.078 in galvanized steel', plywood: 0.75, screw: '8', ultimate: 700, ...print },
  { framing: '0.078 in galvanized steel', plywood: 0.75, screw: '10', ultimate: 950, ...print },
  { framing: '0.078 in galvanized steel', plywood: 0.75, screw: '12', ultimate: 1300, ...print },
  { framing: '0.078 in galvanized steel', plywood: 0.75, screw: '1/4-20', ultimate: 1500, ...print },
] as const;

/** Table 3, recalled. */
export const withdrawalRows = [
  { thread: 0.375, number: 6, ultimate: 150, ...recall },
  { thread: 0.375, number: 8, ultimate: 180, ...recall },
  { thread: 0.375, number: 10, ultimate: 205, ...recall },
  { thread: 0.5, number: 6, ultimate: 200, ...recall },
  { thread: 0.5, number: 8, ultimate: 240, ...recall },
  { thread: 0.5, number: 10, ultimate: 275, ...recall },
  { thread: 0.5, number: 12, ultimate: 315, ...recall },
  { thread: 0.5, number: 14, ultimate: 350, ...recall },
  { thread: 0.625, number: 6, ultimate: 250, ...recall },
  { thread: 0.625, number: 8, ultimate: 295, ...recall },
  { thread: 0.625, number: 10, ultimate: 345, ...recall },
  { thread: 0.625, number: 12, ultimate: 390, ...recall },
  { thread: 0.625, number: 14, ultimate: 440, ...recall },
  { thread: 0.75, number: 6, ultimate: 300, ...recall },
  { thread: 0.75, number: 8, ultimate: 355, ...recall },
  { thread: 0.75, number: 10, ultimate: 415, ...recall },
  { thread: 0.75, number: 12, ultimate: 470, ...recall },
  { thread: 0.75, number: 14, ultimate: 525, ...recall },
  { thread: 1, number: 12, ultimate: 625, ...recall },
  { thread: 1, number: 14, ultimate: 700, ...recall },
  { thread: 1, number: 16, ultimate: 775, ...recall },
  { thread: 1.125, number: 12, ultimate: 705, ...recall },
  { thread: 1.125, number: 14, ultimate: 790, ...recall },
  { thread: 1.125, number: 16, ultimate: 875, ...recall },
  { thread: 2.25, number: 14, ultimate: 1580, ...recall },
] as const;
