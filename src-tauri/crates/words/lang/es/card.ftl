# What stands on the printed card: its labels, then its sentences.

# ---- Labels

card-title = Historial del vehículo
card-vin = Número de bastidor (VIN)
card-engine = Propulsión
card-first-use = En uso desde
card-latest = Última lectura
card-next = Lo próximo
card-nothing-next = Nada del plan tiene todavía fecha ni lectura.
card-history = Intervenciones
card-no-visits = El libro no contiene aún ninguna intervención.
card-day = Fecha
# $unit: km or mi
card-reading = Lectura, { $unit }
card-work = Trabajos
card-receipt = justificante en el libro
card-photo = foto en el libro
card-written-late = anotado tarde
card-amended = corregido
card-issued = Expedido
card-key = Clave
# $unit: km or mi
card-plot = Lecturas a lo largo de los años, { $unit }
card-record = Trabajos realizados
card-last-done = Última vez
card-next-due = Próxima vez
card-no-record = sin constancia
card-writers = Quién ha escrito en el libro

# ---- The car and its visits

card-engine-petrol = Gasolina
card-engine-diesel = Diésel
card-engine-petrol-hybrid = Híbrido de gasolina
card-engine-diesel-hybrid = Híbrido diésel
card-engine-gas = Gas
card-engine-electric = Eléctrico
card-engine-other = Otro
card-vin-hidden = omitido por el dueño
# $tail: its last six characters
card-vin-tail = … { $tail }
card-by-owner = trabajo propio
card-by-workshop = taller
card-item-unknown = trabajo { $number }, que esta versión no conoce
# The mark between a number and its decimals; thousands stand apart by a space in every language.
card-decimal-mark = ,

# $shown: visits on the sheet; $left-out: how many of them are too old for the square
card-visits-note = { $left-out ->
    [0] { $shown ->
        [0] Ninguna intervención.
        [one] { $shown } intervención, que está también en el código QR.
       *[other] { $shown } intervenciones, todas también en el código QR.
    }
    [one] { $shown } intervenciones; en el código QR falta la más antigua.
   *[other] { $shown } intervenciones; en el código QR faltan las { $left-out } más antiguas.
}

# ---- What the history comes to

card-asked-oil = Aceite
card-asked-belts = Correas y cadena
card-asked-brakes = Frenos
card-asked-fluids = Líquidos
card-asked-filters = Filtros
card-asked-repairs = Reparaciones
# $count: further items that have no room on the card
card-more = { $count ->
    [one] y otro trabajo más en el libro
   *[other] y otros { $count } trabajos en el libro
}
# $count: visits with a receipt; $of: all visits
card-receipts = { $of ->
    [one] { $count ->
        [0] La intervención no tiene justificante en el libro.
       *[other] La intervención tiene justificante en el libro.
    }
   *[other] { $count ->
        [0] Ninguna de las { $of } intervenciones tiene justificante en el libro.
        [one] Solo una de las { $of } intervenciones tiene justificante en el libro.
       *[other] { $count } de las { $of } intervenciones tienen justificante en el libro.
    }
}
# The gaps of the plot. $gaps: how many; $months: a number of months; $distance: a distance with its unit
card-plot-note = { $gaps ->
    [0] Nunca más de { $months } meses ni de { $distance } sin intervención en el libro.
    [one] A trazos sobre fondo rayado: más de { $months } meses o de { $distance } sin intervención en el libro.
   *[other] A trazos sobre fondo rayado: más de { $months } meses o de { $distance } sin intervención en el libro, { $gaps } veces.
}
# $count: how many times the instrument was replaced
card-plot-instruments = { $count ->
    [one] Se cambió el cuentakilómetros; la línea muestra la distancia recorrida en total.
   *[other] Se cambió el cuentakilómetros { $count } veces; la línea muestra la distancia recorrida en total.
}
# $from, $to: the days of the first and last entry of one device
card-span = { $from } a { $to }
# $day: a day
card-handed-over = traspasado el { $day }
# $count: owners one after the other; $since: the day of the last handover
card-owners = { $count ->
    [one] Este libro ha tenido un solo dueño.
   *[other] Este libro ha tenido { $count } dueños, el último desde el { $since }.
}
# $count: how many more devices wrote in the book
card-more-writers = { $count ->
    [one] y otro dispositivo
   *[other] y otros { $count } dispositivos
}

# ---- Outside a card that has to be cut out

# $turn: long or short; $fold: yes or no
card-handling = Imprimir ambas caras a tamaño real (100 %), volteadas por el lado { $turn ->
    [long] largo
   *[short] corto
}; cortar por las marcas de las esquinas{ $fold ->
    [yes] {" "}y doblar por las marcas a trazos
   *[no] {""}
}.

# When something is due, in a narrow column under card-next. $day: the day; $reading: the reading with its unit
card-next-day = { $day }
card-next-reading = { $reading }
card-next-both = { $day } o { $reading }

# ---- Beside the square

card-scan = Escanee el código QR con un teléfono para leer este historial y comprobar su firma.
card-scan-plain = Escanee el código QR con un teléfono para ver un resumen de esta tarjeta.
# $day: the day of signing; $key: the fingerprint of the key
card-unchanged = Si la comprobación sale bien, este historial no ha cambiado desde que se firmó el { $day } con la clave { $key }.
card-proves-not = Una firma demuestra que nada se cambió después; no demuestra que los trabajos se hicieran.
# Behind card-unchanged, where there is little room.
card-proves-not-short = Esto no demuestra que los trabajos se hicieran.
card-unsigned = Este código QR contiene texto sin firma, porque no hay ajustada ninguna dirección en la que se abra una tarjeta escaneada.
