/** Cautions and limits, in Spanish. */
import type { Words } from './shape.ts';

export const esLimits: Words['limits'] = {
  falls:
    'Caídas: un techo, sus bordes, huecos y tragaluces matan. Este papel no es un plan de protección contra caídas; el patrón tiene que hacer uno antes de que alguien suba.',
  skylights: 'Los tragaluces y paneles de luz son huecos: cubrir, asegurar y marcar. No se pisan nunca.',
  electricity:
    'Electricidad: paneles, escaleras y personas lejos de las líneas eléctricas; la lámina conduce.',
  swarf: 'Virutas y lámina cortada: lentes y guantes contra cortes; barrer las virutas del techo cada día.',
  heat: 'El metal caliente quema y cansa: agua, sombra y descanso. No se trabaja sobre lámina mojada, con escarcha o polvo.',
  wind: 'Alto a los paneles con ráfagas, relámpagos o lluvia; un panel a medio fijar no está sujeto.',
  authority:
    'Deciden el código local, el inspector oficial y un ingeniero con licencia. Donde difieran, rigen las tablas y ensayos del fabricante del panel.',
  items: 'Los resultados valen solo para los artículos nombrados; una sustitución los anula.',
  frame: 'No se revisan las cargas en la estructura ni en los miembros debajo de la capa que sujeta.',
  deck: 'Un entablado existente se verifica con ensayos de arranque en obra antes de confiar en la tabla.',
  inputs:
    'Los datos supuestos son los nombrados en la página 1; si cambia un dato cambia el resultado y hace falta una nueva revisión.',
  scope:
    'Cubre la succión del viento en las conexiones listadas. No cubre granizo, inundación, fuego, impacto, sismo, arrastre por la pendiente ni movimiento térmico.',
  level:
    'Sin comprobar significa que falta evidencia o un dato; nunca cuenta como resiste, por baja que sea la relación de los otros eslabones.',
};
