import type { ROUND_EN, VERIFY_EN } from '../en/verify.ts'
import type { Table } from '../words.ts'

export const VERIFY_ES: Table<typeof VERIFY_EN> = {
  'above-rating': '{label} ({kind}) conduce {amps:A}; su corriente nominal es {rated:A}.',
  'protection-overloaded':
    '{label} ({kind}) conduce {amps:A} y es de {rated:A}: se calienta hasta que abre, y nadie sabe cuándo.',
  'load-over-volts': '{load} recibe hasta {volts:V}; su placa dice {plate:V} ({share:percent}).',
  'motor-starved':
    '{load} funciona con tan solo {volts:V} de sus {plate:V} ({share:percent}): se frena y se quema.',
  'mains-on-low-voltage':
    '{terminal} es un borne de muy baja tensión y está a {volts:V} respecto a tierra.',
  'transformer-over-volts':
    'El transformador {part} recibe hasta {volts:V}; su primario es para {plate:V}.',
  'low-voltage-joined-to-mains':
    'El borne de muy baja tensión {terminal} está unido a un conductor de red. El neutro cuenta como tal: el día que se abre, queda con tensión.',
  'load-across-mains-and-low-voltage':
    '{load} tiene un conductor en muy baja tensión y otro en un conductor de red.',
  'low-voltage-load-on-mains':
    '{load} es para muy baja tensión y tiene un conductor en la red: nada en su interior está aislado para eso.',
  'no-earth-lead':
    '{load} no tiene conductor de tierra ni doble aislamiento: un defecto deja su metal con tensión.',
  'main-earth-on-small-terminal':
    'La tierra del suministro está en {terminal}, de {rated:A}; por ahí debe pasar una corriente de defecto hasta que abra el disyuntor de {breaker:A}.',
  'load-earth-on-small-terminal':
    'La tierra de {load} está en {terminal}, de {rated:A}; la carga consume {amps:A}, y un defecto más.',
  'run-without-earth':
    '{cable} trae línea o neutro, y ningún conductor de tierra a su lado está conectado en ambos extremos.',
  'metal-not-on-earth': 'El metal de {thing} no está unido a tierra.',
  'mains-tied-to-earth':
    'La tierra está unida a {terminal}, aguas abajo del interruptor diferencial.',
  'metal-live': 'El metal de {thing} está a {volts:V} respecto a tierra.',
  'earth-carries-current':
    'El conductor de tierra {conductor} conduce {amps:A}; por él pueden pasar {limit:A} como máximo.',
  'ground-fault-bypassed':
    'Con el interruptor diferencial disparado, {terminal} de la caja sigue a {volts:V}: se alimenta por fuera de él.',
  'ground-fault-blind':
    'El interruptor diferencial en {device} no tiene alimentación propia: su botón de prueba no actúa y su protección tampoco. Revisar su conductor propio.',
  'ground-fault-near-trip':
    'El interruptor diferencial en {device} ve {amps:A} en marcha normal; puede disparar a partir de {limit:A}.',
  'disconnect-wired-round':
    'Con {device} abierto, {terminal} de la caja sigue a {volts:V}: se alimenta por fuera de él. Nadie puede bloquear esta bañera.',
  'tub-side-live':
    'Con {device} abierto, su {terminal} sigue con tensión: los lados de línea y de bañera están intercambiados.',
  'ground-fault-too-coarse':
    'El interruptor diferencial en {device} dispara a {amps:A}; para proteger personas, aquí debe hacerlo a {limit:A} como máximo.',
  'no-ground-fault-device': 'Ningún interruptor diferencial vigila el circuito de {device}.',
  'on-when-off': '{load} funciona con todo apagado.',
  'only-neutral-switched':
    '{load} se conmuta solo en el neutro: al apagarse sigue a la tensión de línea.',
  'heater-without-water': '{heater} está encendido sin que ninguna bomba mueva agua por él.',
  'heater-past-contact':
    '{heater} está conectado por fuera de uno de sus dos contactos: al apagarse un conductor sigue con tensión, y un solo contacto soldado calentaría sin fin.',
  'heater-past-limit': '{heater} sigue encendido con los contactos limitadores abiertos.',
  'two-speeds-together': '{load} recibe sus dos velocidades a la vez.',
  'probe-open': '{input}: no se detecta sonda. La caja no calentará.',
  'probe-shorted': '{input}: la sonda parece en cortocircuito. La caja no calentará.',
  'reads-low':
    '{input} indica {shown:C} cuando el agua está a {true:C}: calienta de más, o actúa tarde.',
  'reads-high':
    '{input} indica {shown:C} cuando el agua está a {true:C}: deja de calentar antes de tiempo.',
  'probe-misplaced': '{input} recibe {probe}, que está en otro sitio: actúa tarde o nunca.',
  'probe-elsewhere': '{input} recibe {probe}, que está en otro sitio.',
  'loose-and-live': 'El extremo {end} cuelga suelto y daría {amps:A} a una mano.',
  'loose-and-dead': 'El extremo {end} cuelga suelto. No tiene tensión; aislarlo de todos modos.',
  'loose-not-shown-dead':
    'El extremo {end} cuelga suelto en un motor con varios devanados: uno en marcha puede darle tensión. Aislarlo.',
  'dead-short':
    'Cortocircuito franco: {part} conduciría {amps:A} ({rated:A} nominales) y dispara al instante.',
  'overload-trips': '{part} conduciría {amps:A} ({rated:A} nominales) y dispara.',
  'ground-fault-trips':
    '{part} ve una diferencia de {amps:A} y dispara al instante (límite superior {rated:A}).',
  'jumper-against-feed':
    'Mirar primero el puente {jumper} ({label}): está en “{found}”; la alimentación “{feed}” necesita “{needed}”.',
  'load-dead': '{load} nunca funciona.',
  'load-weak': '{load} recibe como máximo el {share:percent} de su tensión: rinde poco.',
  'heater-reduced':
    '{load} recibe el {share:percent} de su tensión, lo máximo que da este suministro, y entrega el {power:percent} de su calor nominal.',
  'load-on-wrong-command': '{load} no responde a su propia orden.',
  'load-elsewhere': '{load} está en los bornes de “{place}”, que es para otro tipo de carga.',
  'draw-above-limit':
    'Lo que puede funcionar a la vez toma {amps:A} de una línea; el límite de corriente permite {limit:A}.',
  'draw-above-breaker':
    'Lo que puede funcionar a la vez toma {amps:A} de una línea; el 80 % del disyuntor son {limit:A}.',
  'limit-not-offered': 'La caja no ofrece un límite de corriente de {setting:A}.',
  'breaker-unknown':
    'No se conoce el disyuntor: nada demuestra que le convenga un límite de corriente de {setting:A}.',
  'breaker-too-large':
    'El disyuntor es de {breaker:A}; la caja puede estar detrás de {largest:A} como máximo.',
  'limit-above-breaker':
    'El límite de corriente deja tomar {allowed:A}; el 80 % del disyuntor son {share:A}.',
  'no-margin':
    'El límite de corriente de {allowed:A} es justo lo que permite el 80 % del disyuntor ({share:A}): sin margen.',
  'never-heats': '{heater} no calienta en ningún modo.',
  'conductor-behind-breaker':
    '{conductor} de {cable} es de {size}: admite un disyuntor de {most:A} como máximo, y hay uno de {breaker:A}.',
  'earth-too-small':
    'La tierra {conductor} de {cable} es de {size}; detrás de un disyuntor de {breaker:A} debe ser de {least} como mínimo.',
  'neutral-too-small':
    'El neutro {conductor} de {cable} es de {size}; detrás de un disyuntor de {breaker:A} debe ser de {least} como mínimo.',
  'lead-earth-thin':
    'El conductor de tierra de {load} es de {size}, más delgado que sus conductores activos ({live}): no está demostrado que soporte un defecto hasta que abra el fusible.',
  'earth-size-not-shown':
    'La tierra {conductor} de {cable} es de {size}, menor que su línea: no está demostrado que sirva detrás de {breaker:A}. Encargar su cálculo.',
  'too-many-on-a-terminal': '{terminal} tiene {count} conductores y admite {most}.',
  'size-not-held': '{terminal} admite de {from} a {to}; {end} es de {size}.',
  'neutral-carries-line':
    '{end} es un conductor de {function} ({colour}) y está a la tensión de línea: la próxima mano lo tomará por uno sin tensión.',
  'leg-carries-no-line':
    '{end} es un conductor de {function} ({colour}) y no está a la tensión de línea.',
  're-identify':
    '{end} es de color {colour} y lleva la tensión de línea ({function}): volver a marcarlo en ambos extremos.',
  'earth-colour-live':
    '{end} ({colour}) tiene aspecto de tierra y se usa como {function}. Sustituirlo.',
  'earth-not-green': '{end} es un conductor de {function} y es de color {colour}.',
  'neutral-colour': '{end} es un conductor de {function} y es de color {colour}.',
  'live-when-off':
    '{load} se conmuta en una sola línea: al apagarse un conductor sigue con tensión.',
  'flow-proof-unproven':
    '{heater} se conserva: no está demostrado que compruebe el flujo como lo quiere la caja ({proof}). Preguntar antes de pedir.',
  'dry-after-reset':
    'Tras un reinicio o un corte de corriente {box} vuelve a un perfil que aquí calienta sin mover agua. Ajustarlo de nuevo antes de que pueda calentar; mejor, elegir una caja que conserve su perfil.',
  'unsafe-after-reset':
    'Tras un reinicio o un corte de corriente {box} vuelve a ajustes que aquí no son seguros. Ajustarlos de nuevo antes de la puesta en marcha; mejor, elegir una caja que los conserve.',
  'overdrawn-after-reset':
    'Tras un reinicio o un corte de corriente {box} vuelve a ajustes que dejan tomar más de lo que este suministro debería dar. Ajustarlos de nuevo.',
  'light-on-wrong-current': '{load} necesita corriente {needs}; su salida da {gives}.',
  'below-least-load':
    '{part} conduce {amps:A}; por debajo de {least:A} no enciende ni apaga con certeza.',
  'wrong-frequency': '{thing} es para {plate:Hz}; el suministro tiene {hertz:Hz}.',
}

export const ROUND_ES: Table<typeof ROUND_EN> = {
  provided: '{sentence} No ocurre mientras {assumed}.',
  'at-most': '{label} ≤ {amps:A}',
  'at-least': '{label} ≥ {amps:A}',
  'when-on': '{sentence} Peor con: {on}.',
  'nothing-on': '{sentence} Con todo apagado.',
}
