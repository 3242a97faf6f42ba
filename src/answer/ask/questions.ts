/** Questions in plain words, in both languages, by the field they fill. */
export interface Question {
  readonly en: string;
  readonly es: string;
}

const questions: Readonly<Record<string, Question>> = {
  'basis.codeYear': {
    en: 'Which year of the building code applies to this roof?',
    es: '¿Qué año del código de construcción rige para este techo?',
  },
  'place.saltWater': {
    en: 'How far is the building from salt water?',
    es: '¿A qué distancia del agua salada está el edificio?',
  },
  'place.below': {
    en: 'Is the underside of the deck in view, so that no screw point may show?',
    es: '¿Se ve la cara inferior de la cubierta, de modo que no deba asomar ninguna punta?',
  },
  'wind.speed': {
    en: 'What is the basic wind speed for this building and its risk category?',
    es: '¿Cuál es la velocidad básica del viento para este edificio y su categoría de riesgo?',
  },
  'wind.exposure': {
    en: 'What lies around the building: trees and houses (B), open country (C), or open water (D)?',
    es: '¿Qué rodea el edificio: árboles y casas (B), campo abierto (C) o agua abierta (D)?',
  },
  'wind.enclosure': {
    en: 'Can large doors or openings stand open on one side in a storm?',
    es: '¿Pueden quedar abiertas puertas o aberturas grandes en un lado durante una tormenta?',
  },
  'wind.groundElevation': {
    en: 'How high above sea level is the site?',
    es: '¿A qué altura sobre el nivel del mar está el terreno?',
  },
  'wind.meanRoofHeight': {
    en: 'What is the mean height of the roof above the ground?',
    es: '¿Cuál es la altura media del techo sobre el suelo?',
  },
  'roof.eaveHeight': {
    en: 'How high is the eave above the ground?',
    es: '¿A qué altura del suelo está el alero?',
  },
  'roof.highestPoint': {
    en: 'How high is the highest point of the roof above the ground?',
    es: '¿A qué altura del suelo está el punto más alto del techo?',
  },
  roofSnow: {
    en: 'What is the snow load on this roof?',
    es: '¿Cuál es la carga de nieve sobre este techo?',
  },
  'details.edgeMember': {
    en: 'Is there a framing member along the eaves and valleys to screw into?',
    es: '¿Hay una pieza de la estructura a lo largo de aleros y limahoyas donde atornillar?',
  },
  'panel.thickness': {
    en: 'What gauge or thickness is the panel?',
    es: '¿Qué calibre o espesor tiene el panel?',
  },
  'panel.grade': {
    en: 'What grade or alloy is the panel?',
    es: '¿De qué grado o aleación es el panel?',
  },
  'panel.upliftTest': {
    en: 'Has this panel been tested for uplift on such a support, and at which spacings?',
    es: '¿Se ha ensayado este panel a succión sobre un apoyo así, y con qué separaciones?',
  },
  'panel.clip': {
    en: 'Which clip was the panel tested with?',
    es: '¿Con qué clip se ensayó el panel?',
  },
  'insulation.compressiveStrength': {
    en: 'What is the compressive strength of the insulation?',
    es: '¿Cuál es la resistencia a compresión del aislante?',
  },
  'insulation.plate': {
    en: 'Which bearing plate goes under the clips?',
    es: '¿Qué placa de apoyo va debajo de los clips?',
  },
  'support.thickness': {
    en: 'How thick is the deck or purlin that the screws hold in?',
    es: '¿Qué espesor tiene la cubierta o la correa donde agarran los tornillos?',
  },
  'support.depth': {
    en: 'How deep is the wood under the panel, in the direction of the screw?',
    es: '¿Qué profundidad de madera hay bajo el panel, en la dirección del tornillo?',
  },
  'support.grade': {
    en: 'What grade of steel is the deck or purlin?',
    es: '¿De qué grado de acero es la cubierta o la correa?',
  },
  'support.specificGravity': {
    en: 'What is stamped on the deck panels: Structural I, OSB, or another grade?',
    es: '¿Qué sello llevan los tableros: Structural I, OSB u otro grado?',
  },
  'support.species': {
    en: 'What species is stamped on the lumber that the screws hold in?',
    es: '¿Qué especie indica el sello de la madera donde agarran los tornillos?',
  },
  'support.moisture': {
    en: 'Will the wood stay dry in service?',
    es: '¿Permanecerá seca la madera en servicio?',
  },
  'support.nailing': {
    en: 'How is the deck nailed: which nail, how far apart at edges and between, into what framing?',
    es: '¿Cómo está clavada la cubierta: qué clavo, a qué separación en bordes e interior, y en qué estructura?',
  },
  'support.fastening': {
    en: 'How is the steel deck fastened to the frame, and what uplift was it designed for?',
    es: '¿Cómo está fijada la cubierta de acero a la estructura, y para qué succión se calculó?',
  },
};

/** Every path has its words: a test holds the table against the ranges. */
export function questionOf(path: string): Question {
  return questions[path] ?? { en: `What is ${path}?`, es: `¿Qué es ${path}?` };
}
