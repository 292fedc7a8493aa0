# The page a buyer lands on after scanning a card. It stands alone and knows nothing but the card.
# Its small formatter knows variables, quoted texts and choices by a variable; numbers and days come written out.

viewer-title = Historial del vehículo
viewer-title-of = { $name }: historial del vehículo
viewer-noscript = Esta página lee la tarjeta en su navegador y para ello necesita JavaScript.
# Its name stands before the choice of a language.
viewer-language = Idioma

# No card yet
viewer-about-heading = El historial de un vehículo en una tarjeta
viewer-about = El código QR de la tarjeta contiene todo el historial de un vehículo: qué se hizo, cuándo y con qué lectura del cuentakilómetros. Escanéelo con la cámara de su teléfono y esta página se abrirá con él, o pegue abajo su texto.
viewer-private = Nada sale de esta página: lo que usted pega se lee aquí, en su navegador.
viewer-paste-label = Texto de una tarjeta
viewer-paste-hint = La dirección entera con las cifras que siguen al #, o solo las cifras.
viewer-paste-button = Leer la tarjeta
viewer-another = Leer otra tarjeta

# Why a card is refused: what is wrong, and what would be right
viewer-refused-heading = Esta tarjeta no se puede mostrar
viewer-refused-digits-form = El código está incompleto o mal escrito; vuelva a escanear el código QR entero, o copie su texto de principio a fin.
viewer-refused-version = El código es de una versión que esta página no conoce; ábralo con una copia más reciente de esta página.
viewer-refused-message = El código está dañado o no procede de una tarjeta así; vuelva a escanear el código QR entero, o pida una impresión nueva.
viewer-refused-signature = La firma no coincide: el código se leyó mal o se cambió después de firmarse; vuelva a escanearlo y, si esto se repite, no se fíe de la tarjeta.
viewer-refused-stream = La firma es correcta, pero lo firmado no se puede descomprimir; pida una tarjeta nueva a quien la expidió.
viewer-refused-claims = La firma es correcta, pero lo firmado no es el historial de un vehículo en forma de tarjeta; pida una nueva a quien la expidió.

# The proof
viewer-proof-heading = Firma comprobada
viewer-proof = Sin cambios desde que se firmó el { $day } con la clave { $key }.
viewer-proof-limits = Esto no demuestra que los trabajos se hicieran. Lo demuestran, hasta donde llegan, los justificantes del libro del dueño: pida verlos y compruebe que el libro muestra la misma clave.

# The car
viewer-car-description = Modelo
viewer-car-vin = Bastidor (VIN)
viewer-car-engine = Propulsión
viewer-car-first-use = En uso desde
viewer-car-latest = Lectura
viewer-car-latest-on = { $reading } el { $day }
viewer-engine-petrol = gasolina
viewer-engine-diesel = diésel
viewer-engine-petrol-hybrid = híbrido de gasolina
viewer-engine-diesel-hybrid = híbrido diésel
viewer-engine-gas = gas
viewer-engine-electric = eléctrico
viewer-engine-other = otro
viewer-distance-km = { $number } km
viewer-distance-mi = { $number } mi

# The visits
viewer-visits-heading = Qué se hizo
viewer-visits-none = Esta tarjeta no contiene ninguna intervención.
viewer-visits-shown = { $count ->
    [one] Una intervención, tal como la anotó el dueño.
   *[other] { $count } intervenciones, la más reciente primero, tal como las anotó el dueño.
}
viewer-visits-left-out = { $count ->
    [one] Una intervención más antigua está en el libro, pero no cabía en la tarjeta.
   *[other] { $count } intervenciones más antiguas están en el libro, pero no cabían en la tarjeta.
}
viewer-visit-no-items = Ningún trabajo nombrado
viewer-who-owner = Por el dueño
viewer-who-workshop = Por un taller
viewer-who-both = Por el dueño y un taller
viewer-who-unsaid = Por quién: no consta
viewer-mark-receipt = justificante en el libro
viewer-mark-photo = foto en el libro
viewer-mark-late = anotada más de 30 días después
viewer-mark-amended = corregida después de anotarse
viewer-item-unknown = Trabajo { $number }

# What comes next
viewer-next-heading = Lo próximo
viewer-next-on-day = antes del { $day }
viewer-next-at-reading = a los { $reading }
viewer-next-either = el { $day } o a los { $reading }, lo que llegue antes
viewer-next-open = sin fecha ni lectura

# New instruments
viewer-instruments-heading = Cuentakilómetros cambiado
viewer-instrument = El { $day }: el antiguo marcaba { $old }, el nuevo empezó en { $new }.

# For comparing with the book
viewer-head-heading = Para comparar con el libro del dueño
viewer-head-key = Clave
viewer-head = Estado del libro
viewer-private-card = Esta página no ha enviado nada: el historial vino con la dirección y se queda en su navegador.

# What to ask: no accusation, and each sentence names what it is about
# $count: how many; $of: of how many; $day and $reading, $then and $shown: two places; $items: what is done
viewer-ask-heading = Qué preguntar
viewer-ask-note = Calculado a partir de esta tarjeta, según los límites usuales del oficio. Una pregunta no es un defecto comprobado.
viewer-ask-no-visits = La tarjeta no contiene ninguna intervención: ¿qué se le hizo al vehículo y dónde está escrito?
viewer-ask-lower = { $count ->
    [one] Una lectura baja
   *[other] { $count } lecturas bajan, la que más
} de { $reading } el { $day } a { $shown } el { $then }: ¿cómo se explica?
viewer-ask-jump = De { $reading } el { $day } a { $shown } el { $then } hay más de lo que un coche recorre en ese tiempo: ¿está mal escrita una lectura?
viewer-ask-ahead = La tarjeta nombra el { $day }, posterior al día en que se expidió: ¿está mal escrita una fecha?
viewer-ask-gap = { $count ->
    [one] Ninguna intervención
   *[other] { $count } tramos de más de 24 meses o 30.000 km (18.641 mi) sin intervención, el más largo
} del { $day } con { $reading } al { $then } con { $shown }: ¿se hizo algo que no está en el libro?
viewer-ask-before = El historial empieza el { $day } con { $reading }: ¿hay papeles anteriores?
viewer-ask-unrecorded = No hay constancia de lo siguiente: { $items }. El vehículo ya tiene edad o recorrido para ello: ¿se hizo?
viewer-ask-passed = Ya vencido: { $items }. ¿Se ha hecho?
viewer-ask-old-card = La tarjeta se expidió el { $day }: ¿qué se ha hecho desde entonces, y hay una más reciente?
viewer-ask-clock = La tarjeta se expidió el { $day }, que aún está por llegar: ¿es correcta la fecha de este dispositivo, o la de la tarjeta?
viewer-ask-instruments = El cuentakilómetros se cambió el { $day }, el antiguo con { $reading }, el nuevo con { $shown }: ¿hay justificante?
viewer-ask-receipts = Intervenciones con justificante en el libro: { $count } de { $of }. ¿Puede usted ver los justificantes?
viewer-ask-late = Intervenciones anotadas más de 30 días después: { $count } de { $of }, la última la del { $day }. ¿Según qué notas?
viewer-ask-amended = Intervenciones corregidas después de anotarse: { $count } de { $of }, la última la del { $day }. ¿Qué se cambió y por qué?
viewer-ask-left-out = { $count ->
    [one] Una intervención más antigua está
   *[other] { $count } intervenciones más antiguas están
} en el libro, pero no en esta tarjeta: ¿puede usted ver el libro?

# The drawing of its way; the first for who cannot see it
viewer-plot = Dibujo de { $count } lecturas, de { $reading } el { $day } a { $shown } el { $then }. Las intervenciones de abajo las enumeran.
viewer-plot-gap = A trazos: más de 24 meses o 30.000 km (18.641 mi) sin intervención.
viewer-plot-odd = Rombos: lecturas que bajan o saltan.

# An older card of the same car, held against this one
viewer-scan-button = Escanear con la cámara
viewer-scan-failed = La cámara no se puede usar aquí; pegue el texto en su lugar.
viewer-compare-heading = Comparar con una tarjeta más antigua
viewer-compare-label = Texto de una tarjeta más antigua de este vehículo
viewer-compare-button = Comparar
viewer-compare-contained = La tarjeta del { $newer } contiene la del { $older } sin cambios: { $count ->
    [one] una intervención es igual
   *[other] { $count } intervenciones son iguales
}.
viewer-compare-nothing = Las tarjetas del { $older } y del { $newer } no tienen intervenciones en común que comparar.
viewer-compare-differs = La tarjeta del { $newer } no contiene la del { $older } sin cambios. Pregunte por cada uno de estos puntos:
viewer-compare-same-key = La misma clave firmó ambas.
viewer-compare-other-key = Las firmaron claves distintas, como tras un cambio de dueño o de dispositivo.
viewer-compare-car-unknown = Al menos una no muestra número de bastidor, así que no es seguro que sean del mismo vehículo.
viewer-compare-other-car = Los números de bastidor son distintos.
viewer-compare-first-use = Los días del primer uso son distintos.
viewer-compare-latest = La última lectura es más baja, o de un día anterior.
viewer-compare-instrument = El cuentakilómetros cambiado el { $day } ya no se nombra, o se nombra de otro modo.
viewer-compare-fewer = El libro contiene menos intervenciones.
viewer-compare-changed = La intervención del { $day } dice otra cosa{ $amended ->
    [yes] {" "}y está marcada como corregida
   *[no] {""}
}.
viewer-compare-missing = La intervención del { $day } ha desaparecido.
viewer-compare-added = La intervención del { $day } se anotó después de la tarjeta más antigua.
viewer-compare-more = { $count ->
    [one] Otro más.
   *[other] Otros { $count } más.
}
