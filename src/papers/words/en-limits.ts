/** Cautions and limits, in English. They stand on every issued submittal. */
export const enLimits = {
  falls:
    'Falls: a roof, its edges, openings and skylights kill. This paper is not a fall-protection plan; the employer makes one before anybody goes up.',
  skylights: 'Skylights and light panels are holes: cover, secure and mark them. Never step on one.',
  electricity: 'Electricity: keep panels, ladders and people clear of power lines; metal sheet conducts.',
  swarf: 'Swarf and cut sheet: eye protection and cut-rated gloves; sweep chips off the roof every day.',
  heat: 'Hot metal burns and tires: water, shade and rest. No work on wet, frosted or dusty sheet.',
  wind: 'Stop handling panels in gusts, lightning or rain; a half-fastened panel is not held.',
  authority:
    'The local code, the building official and a licensed engineer decide. Tables and tests of the panel maker govern where they differ.',
  items: 'Results are valid for the named items only; a substitution voids them.',
  frame: 'Loads on the frame and on members below the holding ply are not checked.',
  deck: 'An existing deck is verified by pull tests in the field before the schedule is relied on.',
  inputs:
    'Assumed inputs are the assumptions named on page 1; a change of any input changes the result and wants a new revision.',
  scope:
    'Covered is wind uplift on the connections listed. Hail, flood, fire, impact, earthquake, drag along the slope and thermal movement are not.',
  level:
    'Unproven means that evidence or an input is missing; it never counts as holding, however low the other links stand.',
} as const;
