<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
 <context>
  <name>Fullshell</name>
  <message>
   <location filename="planner/ui/languages.py" />
   <source>English</source>
   <comment>the name of this language</comment>
   <translation>Español</translation>
  </message>
  <message>
   <location filename="planner/ui/languages.py" />
   <source>%</source>
   <comment>after a number</comment>
   <translation> %</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Mon</source>
   <comment>short day</comment>
   <translation>lun</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Tue</source>
   <comment>short day</comment>
   <translation>mar</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Wed</source>
   <comment>short day</comment>
   <translation>mié</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Thu</source>
   <comment>short day</comment>
   <translation>jue</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Fri</source>
   <comment>short day</comment>
   <translation>vie</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Sat</source>
   <comment>short day</comment>
   <translation>sáb</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Sun</source>
   <comment>short day</comment>
   <translation>dom</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Monday</source>
   <comment>day</comment>
   <translation>lunes</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Tuesday</source>
   <comment>day</comment>
   <translation>martes</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Wednesday</source>
   <comment>day</comment>
   <translation>miércoles</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Thursday</source>
   <comment>day</comment>
   <translation>jueves</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Friday</source>
   <comment>day</comment>
   <translation>viernes</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Saturday</source>
   <comment>day</comment>
   <translation>sábado</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Sunday</source>
   <comment>day</comment>
   <translation>domingo</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Jan</source>
   <comment>short month</comment>
   <translation>ene</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Feb</source>
   <comment>short month</comment>
   <translation>feb</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Mar</source>
   <comment>short month</comment>
   <translation>mar</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Apr</source>
   <comment>short month</comment>
   <translation>abr</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>May</source>
   <comment>short month</comment>
   <translation>may</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Jun</source>
   <comment>short month</comment>
   <translation>jun</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Jul</source>
   <comment>short month</comment>
   <translation>jul</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Aug</source>
   <comment>short month</comment>
   <translation>ago</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Sep</source>
   <comment>short month</comment>
   <translation>sept</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Oct</source>
   <comment>short month</comment>
   <translation>oct</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Nov</source>
   <comment>short month</comment>
   <translation>nov</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Dec</source>
   <comment>short month</comment>
   <translation>dic</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>January</source>
   <comment>month</comment>
   <translation>enero</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>February</source>
   <comment>month</comment>
   <translation>febrero</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>March</source>
   <comment>month</comment>
   <translation>marzo</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>April</source>
   <comment>month</comment>
   <translation>abril</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>May</source>
   <comment>month</comment>
   <translation>mayo</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>June</source>
   <comment>month</comment>
   <translation>junio</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>July</source>
   <comment>month</comment>
   <translation>julio</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>August</source>
   <comment>month</comment>
   <translation>agosto</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>September</source>
   <comment>month</comment>
   <translation>septiembre</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>October</source>
   <comment>month</comment>
   <translation>octubre</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>November</source>
   <comment>month</comment>
   <translation>noviembre</translation>
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>December</source>
   <comment>month</comment>
   <translation>diciembre</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Count</source>
   <translation>Contar</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Invented place: not for a real trip.</source>
   <translation>Lugar inventado: no vale para una salida real.</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Trap before</source>
   <translation>Nasa anterior</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Next trap</source>
   <translation>Nasa siguiente</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Set</source>
   <translation>Calada</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Set five minutes earlier</source>
   <translation>Calada cinco minutos antes</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Set five minutes later</source>
   <translation>Calada cinco minutos después</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Set now</source>
   <translation>Calada ahora</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>now</source>
   <translation>ahora</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Hauled</source>
   <translation>Recogida</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Hauled five minutes earlier</source>
   <translation>Recogida cinco minutos antes</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Hauled five minutes later</source>
   <translation>Recogida cinco minutos después</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Hauled now</source>
   <translation>Recogida ahora</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Judged: legal crabs looked at for fullness. Light ones are judged too, those with eggs are females too.</source>
   <translation>Examinados: cangrejos de talla legal a los que se miró el llenado. Los vacíos cuentan también como examinados, y las que llevan huevos, también como hembras.</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Nothing more in it</source>
   <translation>No hay nada más</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>All traps</source>
   <translation>Todas las nasas</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Finish</source>
   <translation>Terminar</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Other kinds, such as 2 pinfish</source>
   <translation>Otras especies, como 2 sargos</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Notes on this trap</source>
   <translation>Notas de esta nasa</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>A dash is not recorded, which is not zero.</source>
   <translation>Un guion quiere decir no anotado, que no es lo mismo que cero.</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Trap</source>
   <translation>Nasa</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Keep</source>
   <translation>Talla</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Short</source>
   <translation>Pequeños</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Fem.</source>
   <translation>Hem.</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Eggs</source>
   <translation>Huevos</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Judg.</source>
   <translation>Exam.</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Light</source>
   <translation>Vacíos</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Label of another trap</source>
   <translation>Etiqueta de otra nasa</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Add</source>
   <translation>Añadir</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Back to counting</source>
   <translation>Seguir contando</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Save the file</source>
   <translation>Guardar archivo</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Send the file…</source>
   <translation>Enviar archivo…</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Copy as text</source>
   <translation>Copiar como texto</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Take the file or the text home. In Fullshell: Log hauls, Import. Taking it in twice adds nothing.</source>
   <translation>Lleve a casa el archivo o el texto. En Fullshell: Anotar recogidas, Importar. Importarlo dos veces no añade nada.</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>The same as text</source>
   <translation>Lo mismo como texto</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Empty this tally</source>
   <translation>Vaciar este recuento</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Keeper</source>
   <translation>De talla</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Female</source>
   <translation>Hembras</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>With eggs</source>
   <translation>Con huevos</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Judged</source>
   <translation>Examin.</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>kept on this phone</source>
   <translation>guardado en este teléfono</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>kept only while this tab is open: save before you close it</source>
   <translation>guardado solo mientras esta pestaña esté abierta: guarde el archivo antes de cerrarla</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>NOT kept: save the file now</source>
   <translation>SIN guardar: guarde el archivo ahora</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>{kind} in {trap}</source>
   <translation>{kind} en {trap}</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>one {kind} less in {trap}</source>
   <translation>−1 {kind} en {trap}</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>nothing more in {trap}</source>
   <translation>nada más en {trap}</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>set time of {trap}</source>
   <translation>hora de calada de {trap}</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>haul time of {trap}</source>
   <translation>hora de recogida de {trap}</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>other kinds of {trap}</source>
   <translation>otras especies de {trap}</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>notes of {trap}</source>
   <translation>notas de {trap}</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>new trap {trap}</source>
   <translation>nasa nueva {trap}</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>emptying from {trap}</source>
   <translation>vaciado desde {trap}</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>keepers</source>
   <translation>de talla</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>shorts</source>
   <translation>pequeños</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>females</source>
   <translation>hembras</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>with eggs</source>
   <translation>con huevos</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>judged</source>
   <translation>examinados</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>light</source>
   <translation>vacíos</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>{hauled} of {whole} traps</source>
   <translation>{hauled} de {whole} nasas</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>{trap} would come up before it was set: correct one of the times.</source>
   <translation>{trap} se recogería antes de calarse: corrija una de las dos horas.</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>This trap</source>
   <translation>Esta nasa</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>(no label)</source>
   <translation>(sin etiqueta)</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>{at} of {whole}</source>
   <translation>{at} de {whole}</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>{kind}: {count}. Add one</source>
   <translation>{kind}: {count}. Sumar uno</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>not recorded</source>
   <translation>no anotado</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Undo {what}</source>
   <translation>Deshacer: {what}</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Undo</source>
   <translation>Deshacer</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Nothing recorded, so not in the file: {traps}.</source>
   <translation>Sin nada anotado, así que no van en el archivo: {traps}.</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>The water temperature is not a number and is left out.</source>
   <translation>La temperatura del agua no es un número y se omite.</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Saved as {file}, where this phone keeps downloads. The tally stays here too.</source>
   <translation>Guardado como {file}, donde este teléfono guarda las descargas. El recuento también sigue aquí.</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Sent.</source>
   <translation>Enviado.</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Not sent. Save the file or copy the text instead.</source>
   <translation>No se envió. Guarde el archivo o copie el texto.</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Press long on the text below and copy it.</source>
   <translation>Mantenga pulsado el texto de abajo y cópielo.</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Copied. Paste it into a message to yourself.</source>
   <translation>Copiado. Péguelo en un mensaje para usted.</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>One {kind} less</source>
   <translation>Quitar uno: {kind}</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Tally {trip}</source>
   <translation>Recuento {trip}</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Water, degrees Fahrenheit</source>
   <translation>Agua, grados Fahrenheit</translation>
  </message>
  <message>
   <location filename="resources/deck/tally-page.html" />
   <source>Water, degrees Celsius</source>
   <translation>Agua, grados Celsius</translation>
  </message>
  <message>
   <location filename="planner/cli/arguments.py" />
   <source> (invented)</source>
   <translation> (inventado)</translation>
  </message>
  <message>
   <location filename="planner/cli/arguments.py" />
   <source>text is for people, JSON and CSV for programs (default: text)</source>
   <translation>text es para personas; json y csv, para programas (predeterminado: text)</translation>
  </message>
  <message>
   <location filename="planner/cli/arguments.py" />
   <source>metres or feet (default: in text as the place file has it, else metres)</source>
   <translation>metros o pies (predeterminado: en texto, lo que diga el archivo de lugar; si no, metros)</translation>
  </message>
  <message>
   <location filename="planner/cli/arguments.py" />
   <source>a place file, or a name of your book</source>
   <translation>un archivo de lugar, o un nombre de su libro de lugares</translation>
  </message>
  <message>
   <location filename="planner/cli/arguments.py" />
   <source>default: today, 00:00</source>
   <translation>predeterminado: hoy a las 00:00</translation>
  </message>
  <message>
   <location filename="planner/cli/arguments.py" />
   <source>default: {days} days later; ISO 8601, without an offset the place's local time</source>
   <translation>predeterminado: {days} días después; ISO 8601; sin diferencia horaria vale la hora local del lugar</translation>
  </message>
  <message>
   <location filename="planner/cli/arguments.py" />
   <source>default: today</source>
   <translation>predeterminado: hoy</translation>
  </message>
  <message>
   <location filename="planner/cli/arguments.py" />
   <source>included; default: {default} later</source>
   <translation>incluido; predeterminado: {default} después</translation>
  </message>
  <message>
   <location filename="planner/cli/arguments.py" />
   <source>a logbook file or a haul table (CSV)</source>
   <translation>un archivo de registro o una tabla de recogidas (CSV)</translation>
  </message>
  <message>
   <location filename="planner/cli/check_figures.py" />
   <source>mean level</source>
   <translation>nivel medio</translation>
  </message>
  <message>
   <location filename="planner/cli/check_figures.py" />
   <source>mean range</source>
   <translation>carrera media</translation>
  </message>
  <message>
   <location filename="planner/cli/check_figures.py" />
   <source>range at springs</source>
   <translation>carrera, mareas vivas</translation>
  </message>
  <message>
   <location filename="planner/cli/check_figures.py" />
   <source>range at neaps</source>
   <translation>carrera, mareas muertas</translation>
  </message>
  <message>
   <location filename="planner/cli/check_figures.py" />
   <source>mean higher high water</source>
   <translation>pleamar media superior</translation>
  </message>
  <message>
   <location filename="planner/cli/check_figures.py" />
   <source>mean lower low water</source>
   <translation>bajamar media inferior</translation>
  </message>
  <message>
   <location filename="planner/cli/check_figures.py" />
   <source>highest in 19 years</source>
   <translation>máximo en 19 años</translation>
  </message>
  <message>
   <location filename="planner/cli/check_figures.py" />
   <source>lowest in 19 years</source>
   <translation>mínimo en 19 años</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>{constants}{state}, {constituent} the largest; node factors {node_factors}</source>
   <translation>{constants}{state}, {constituent} la mayor; factores nodales {node_factors}</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>{difference_m:{sign}.0f} cm</source>
   <translation>{difference_m:{sign}.0f} cm</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>N</source>
   <translation>N</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>S</source>
   <translation>S</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>E</source>
   <translation>E</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>W</source>
   <translation>O</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>position: {latitude_deg:.4f} {north_south}, {longitude_deg:.4f} {east_west}; clock of {key}</source>
   <translation>posición: {latitude_deg:.4f} {north_south}, {longitude_deg:.4f} {east_west}; reloj de {key}</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>water: {made_of}; heights above {datum}</source>
   <translation>agua: {made_of}; alturas sobre {datum}</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>differences from {name}</source>
   <translation>diferencias respecto a {name}</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source> of {constants_state}</source>
   <translation> de {constants_state}</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>tide: {tide_type}</source>
   <translation>marea: {tide_type}</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>observed: {seen} high and low waters, {matched} matched with predicted ones</source>
   <translation>observado: {seen} pleamares y bajamares, {matched} emparejadas con las previstas</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>observed: {size} levels beside the predicted ones</source>
   <translation>observado: {size} niveles comparados con los previstos</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>unknown from one</source>
   <translation>no se sabe con una sola</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>{apart:{sign}.2f} ft</source>
   <translation>{apart:{sign}.2f} ft</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>fitted to the levels, lags on UTC:</source>
   <translation>ajustado a los niveles, con los desfases en UTC:</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>constituent</source>
   <translation>constituyente</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>amplitude, {unit}</source>
   <translation>amplitud, {unit}</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>lag, deg</source>
   <translation>desfase, °</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>source: {source}</source>
   <translation>fuente: {source}</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>ramp: launches from {height} up</source>
   <translation>rampa: se puede botar a partir de {height}</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>slack: {when}</source>
   <translation>estoa: {when}</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>water temperature: {range} °C over the year</source>
   <translation>temperatura del agua: {range} °C a lo largo del año</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>closures: {listed}</source>
   <translation>vedas: {listed}</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>rules: {notes}, checked {checked}</source>
   <translation>normas: {notes}, comprobadas el {checked}</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>constituents</source>
   <translation>constituyentes</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>tide: the water never turns here</source>
   <translation>marea: aquí el agua no tiene pleamares ni bajamares</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>  heights: {bias} on average, scatter {scatter}</source>
   <translation>  alturas: {bias} de media, dispersión {scatter}</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>{scatter:.0f} min</source>
   <translation>{scatter:.0f} min</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>  times: {time_bias_min:+.0f} min on average, scatter {spread}</source>
   <translation>  horas: {time_bias_min:+.0f} min de media, dispersión {spread}</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>yearly</source>
   <translation>anuales</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>continuous</source>
   <translation>continuos</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>spot</source>
   <translation>puesto</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>depth</source>
   <translation>profundidad</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>trap</source>
   <translation>nasa</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>cover at lowest</source>
   <translation>agua encima mínima</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>note</source>
   <translation>nota</translation>
  </message>
  <message>
   <location filename="planner/cli/check_text.py" />
   <source>notes</source>
   <translation>notas</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>What a place file says, whether it can be right, and what was observed there.</source>
   <translation>Lo que dice un archivo de lugar, si puede ser cierto y lo que se observó allí.</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>what was seen there: CSV with the header time,height,kind for high and low waters, or time,height for levels; heights in the units of the place file, or of --units</source>
   <translation>lo que se vio allí: CSV con el encabezado time,height,kind para pleamares y bajamares, o time,height para niveles; alturas en las unidades del archivo de lugar, o en las de --units</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>work constants out from the levels of --observed (15 to 400 days of them)</source>
   <translation>calcular las constantes a partir de los niveles de --observed (de 15 a 400 días)</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>--fit needs --observed FILE with levels: a CSV headed time,height</source>
   <translation>--fit necesita --observed FILE con niveles: un CSV con el encabezado time,height</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>the file is in order</source>
   <translation>el archivo está en orden</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>season</source>
   <translation>época del año</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>moon</source>
   <translation>luna</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>runs</source>
   <translation>salidas recientes</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>place</source>
   <translation>lugar</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>day</source>
   <translation>día</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>fullness (80%)</source>
   <translation>llenado (80 %)</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>light crabs (80%)</source>
   <translation>vacíos (80 %)</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>why, in points</source>
   <translation>por qué, en puntos</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>moon's age</source>
   <translation>edad lunar</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>water</source>
   <translation>agua</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>How full the crabs should be, day by day, and why.</source>
   <translation>Cuán llenos deberían estar los cangrejos, día por día, y por qué.</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>learned from {trips}</source>
   <translation>aprendido de {trips}</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>week</source>
   <translation>semana</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>weeks</source>
   <translation>semanas</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>as the average</source>
   <translation>como la media</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>from what is known in general (no logged trip speaks yet)</source>
   <translation>según lo que se sabe en general (todavía no hay salidas registradas en que apoyarse)</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>Points are crabs in 100 more or fewer light than the year's average of {yearly_light_share:.0f}.</source>
   <translation>Los puntos son los cangrejos de cada 100 que habrá vacíos de más o de menos respecto a la media del año, que es {yearly_light_share:.0f}.</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>logged trip</source>
   <translation>salida anotada</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>logged trips</source>
   <translation>salidas anotadas</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>{lunar_age_d:.0f} d</source>
   <translation>{lunar_age_d:.0f} d</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>how full the crabs should be, {basis}</source>
   <translation>cuán llenos deberían estar los cangrejos, {basis}</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/doctor.py" />
   <source>What is wrong with this installation, and what to do about it; changes nothing.</source>
   <translation>Qué falla en esta instalación y qué hacer al respecto; no cambia nada.</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/doctor.py" />
   <source>what may be passed on: versions and findings, no folder, name, place or log</source>
   <translation>lo que se puede compartir: versiones y resultados, sin carpetas, nombres, lugares ni registro</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/doctor.py" />
   <source>(default: text)</source>
   <translation>(predeterminado: text)</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/learn.py" />
   <source>What the log says: effects with their intervals, and how forecasts did.</source>
   <translation>Lo que dice el registro: los efectos con sus intervalos, y cómo resultaron los pronósticos.</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/learn.py" />
   <source>light crabs of 100, between best and worst day, that are worth caring about (default: {default_care})</source>
   <translation>cangrejos vacíos de cada 100, entre el mejor día y el peor, a partir de los cuales la diferencia merece atención (predeterminado: {default_care})</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/learn.py" />
   <source>"{given}" is not a number of points from 1 to 100</source>
   <translation>"{given}" no es un número de puntos de 1 a 100</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/learn.py" />
   <source>No trip here was judged for fullness, so no effect of moon or season is estimated.</source>
   <translation>En ninguna salida de aquí se examinó el llenado, así que no se estima ningún efecto de la luna ni de la estación.</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/learn.py" />
   <source>{trips}, {judged} crabs judged, {light} light</source>
   <translation>{trips}, {judged} cangrejos examinados, {light} vacíos</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/learn.py" />
   <source>{light} of {judged}</source>
   <translation>{light} de {judged}</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/learn.py" />
   <source>trip</source>
   <translation>salida</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/learn.py" />
   <source>hauls</source>
   <translation>recogidas</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/picture.py" />
   <source>Draw a view of the window to a PNG file; no screen is needed.</source>
   <translation>Dibuja una vista de la ventana en un archivo PNG; no hace falta pantalla.</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/picture.py" />
   <source>{out}: the view {view}, {width}x{height}
</source>
   <translation>{out}: la vista {view}, {width}x{height}
</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/picture.py" />
   <source>the file to write</source>
   <translation>el archivo que se escribe</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/picture.py" />
   <source>(default: dates)</source>
   <translation>(predeterminado: dates)</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/picture.py" />
   <source>a place file or name (default: the demo place)</source>
   <translation>un archivo de lugar o un nombre (predeterminado: el lugar de demostración)</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/picture.py" />
   <source>a logbook file or haul table</source>
   <translation>un archivo de registro o una tabla de recogidas</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/picture.py" />
   <source>(default: 1280x800)</source>
   <translation>(predeterminado: 1280x800)</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/picture.py" />
   <source>the day the window is opened on</source>
   <translation>el día en que se abre la ventana</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/picture.py" />
   <source>"{given}" is not a size; write it like 1280x800, from 640x480 to 7680x4320</source>
   <translation>"{given}" no es un tamaño; escríbalo como 1280x800, de 640x480 a 7680x4320</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/plans.py" />
   <source>Ranked plans: when to set and when to haul.</source>
   <translation>Planes por orden: cuándo calar y cuándo recoger.</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/plans.py" />
   <source>how many plans at most (default: {default_most})</source>
   <translation>cuántos planes como máximo (predeterminado: {default_most})</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/plans.py" />
   <source>the water wished for at the haul; decides between plans of the same catch</source>
   <translation>el agua que se desea al recoger; decide entre planes de igual captura</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/plans.py" />
   <source>when in the day to haul; decides between plans of the same catch</source>
   <translation>a qué hora del día recoger; decide entre planes de igual captura</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/plans.py" />
   <source>short: rank as if each day of soak took a fifth of the keepers</source>
   <translation>short: ordena como si cada día en el agua quitara una quinta parte de los de talla</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/plans.py" />
   <source>long: rank by the keepers of a drive, two drives for a haul on another day than the set</source>
   <translation>long: ordena por los de talla de cada viaje, contando dos viajes si se recoge otro día que el de la calada</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/plans.py" />
   <source>a day within the span: say what rules a set or haul out, or what it lacks</source>
   <translation>un día dentro del periodo: dice qué descarta una calada o una recogida, o qué le falta</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/plans.py" />
   <source>"{given}" is not a number from 1 to 1000</source>
   <translation>"{given}" no es un número de 1 a 1000</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/plans.py" />
   <source>--why has no place in a table; ask for --format text or json</source>
   <translation>--why no cabe en una tabla; pida --format text o json</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/plans.py" />
   <source>--why {why} is outside {first} to {last}; give --from and --to around it</source>
   <translation>--why {why} queda fuera de {first} a {last}; indique --from y --to que lo incluyan</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/plans.py" />
   <source>set-and-haul plans, most full keepers first</source>
   <translation>planes de calada y recogida, primero los de más llenos de talla</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/plans.py" />
   <source>{rank:&gt;3}  set {set_at}, haul {haul_at}, soak {soak}</source>
   <translation>{rank:&gt;3}  calar {set_at}, recoger {haul_at}, en el agua {soak}</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/plans.py" />
   <source>ruled out</source>
   <translation>descartados</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/plans.py" />
   <source>pairs of set and haul</source>
   <translation>pares de calada y recogida</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/sky.py" />
   <source>Sun and moon, day by day, and the moon's phases.</source>
   <translation>Sol y luna, día por día, y las fases de la luna.</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/sky.py" />
   <source>{default_days} days</source>
   <translation>{default_days} días</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/sky.py" />
   <source>first light</source>
   <translation>alba</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/sky.py" />
   <source>sunrise</source>
   <translation>salida sol</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/sky.py" />
   <source>sunset</source>
   <translation>puesta sol</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/sky.py" />
   <source>last light</source>
   <translation>anochecer</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/sky.py" />
   <source>moonrise</source>
   <translation>salida luna</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/sky.py" />
   <source>moonset</source>
   <translation>puesta luna</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/sky.py" />
   <source>lit</source>
   <translation>ilum.</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/sky.py" />
   <source>{lit:.0%}</source>
   <translation>{lit:.0%}</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/sky.py" />
   <source>{lunar_age_d:.1f} d</source>
   <translation>{lunar_age_d:.1f} d</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/sky.py" />
   <source>sun and moon, on the clock of {key}</source>
   <translation>sol y luna, en el reloj de {key}</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/sky.py" />
   <source>up all day</source>
   <translation>no se pone</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/sky.py" />
   <source>{name}: {when} {zone}</source>
   <translation>{name}: {when} {zone}</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/sky.py" />
   <source>down all day</source>
   <translation>no sale</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/start.py" />
   <source>A picture of the window: {picture}</source>
   <translation>Una imagen de la ventana: {picture}</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/start.py" />
   <source>Every job runs without a screen: fullshell --help</source>
   <translation>Todas las tareas funcionan sin pantalla: fullshell --help</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/start.py" />
   <source>There is no screen here, so this is the invented demo place in text.</source>
   <translation>Aquí no hay pantalla, así que esto es el lugar inventado de la demostración, en texto.</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/start.py" />
   <source>There is no screen here, so this is the place in text.</source>
   <translation>Aquí no hay pantalla, así que esto es el lugar en texto.</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/start.py" />
   <source>No picture of the window: {notice}</source>
   <translation>Sin imagen de la ventana: {notice}</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/take.py" />
   <source>the trip sheet</source>
   <translation>la hoja de la salida</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/take.py" />
   <source>the calendar file</source>
   <translation>el archivo de calendario</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/take.py" />
   <source>the waypoints</source>
   <translation>los puntos (GPX)</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/take.py" />
   <source>the water at the spots</source>
   <translation>el agua en los puestos</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/take.py" />
   <source>Write what is taken along for a plan: the trip sheet (.pdf), a calendar file (.ics), waypoints (.gpx) or the water at the spots (.csv).</source>
   <translation>Escribe lo que se lleva para un plan: la hoja de la salida (.pdf), un archivo de calendario (.ics), los puntos (.gpx) o el agua en los puestos (.csv).</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/take.py" />
   <source>{out}: {kinds} of plan {plan}, set {begin}, haul {end}
</source>
   <translation>{out}: {kinds} del plan {plan}, calar {begin}, recoger {end}
</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/take.py" />
   <source>the file to write; its ending says which</source>
   <translation>el archivo que se escribe; su terminación dice cuál</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/take.py" />
   <source>which of the ranked plans of these days, as `fullshell plans` ranks them (default: 1)</source>
   <translation>cuál de los planes de estos días, en el orden de `fullshell plans` (predeterminado: 1)</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/take.py" />
   <source>--plan {plan}: there are {found} plans at {name} from {first} to {last}; see fullshell plans, or give other days</source>
   <translation>--plan {plan}: hay {found} planes en {name} del {first} al {last}; consulte fullshell plans o indique otros días</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/tally.py" />
   <source>Write what a trip is tallied on: a sheet to print, or a page for a phone.</source>
   <translation>Escribe aquello en lo que se hace el recuento de una salida: una hoja para imprimir o una página para el teléfono.</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/tally.py" />
   <source>{out}: {rows} traps of trip {name}
</source>
   <translation>{out}: {rows} nasas de la salida {name}
</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/tally.py" />
   <source>the file to write; its ending says which of the two</source>
   <translation>el archivo que se escribe; su terminación dice cuál de los dos</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/tally.py" />
   <source>a trip of the log, with its own rows</source>
   <translation>una salida del registro, con sus propias filas</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/tally.py" />
   <source>the day of hauling, for the traps of the last trip or of the next (default: today)</source>
   <translation>el día de la recogida, para las nasas de la última salida o de la próxima (predeterminado: hoy)</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/tally.py" />
   <source>the log has no trip "{trip}" at {name}; leave --trip out for a new trip</source>
   <translation>el registro no tiene ninguna salida "{trip}" en {name}; omita --trip para una salida nueva</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>{name}: p = {p:.2f}</source>
   <translation>{name}: p = {p:.2f}</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>Compare traps honestly, and lay out the next trip.</source>
   <translation>Compara las nasas con honradez y las reparte para la próxima salida.</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>{name}: p &lt; {least_p:.2f}</source>
   <translation>{name}: p &lt; {least_p:.2f}</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>{p_best:.0%}</source>
   <translation>{p_best:.0%}</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>design, entrances, colour, bait, spot, trap, depth, soak or a column of your own (default: design)</source>
   <translation>design, entrances, colour, bait, spot, trap, depth, soak o una columna propia (predeterminado: design)</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>keepers, crabs, shorts, females, bycatch or light (default: keepers)</source>
   <translation>keepers, crabs, shorts, females, bycatch o light (predeterminado: keepers)</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>the day from which dates are counted (default: today)</source>
   <translation>el día desde el que se cuentan las fechas (predeterminado: hoy)</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>a difference worth knowing of, such as 1.5 (default)</source>
   <translation>una diferencia que merezca la pena conocer, por ejemplo 1.5 (predeterminado)</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>"{given}" is not a ratio from 1.01 to 100, such as 1.5</source>
   <translation>"{given}" no es una razón de 1.01 a 100, por ejemplo 1.5</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>total</source>
   <translation>total</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>best one</source>
   <translation>el mejor</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>Next trip, so that designs can be told apart soonest:</source>
   <translation>Próxima salida, para poder distinguir cuanto antes los modelos:</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>share (80%)</source>
   <translation>proporción (80%)</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>a haul (80%)</source>
   <translation>por recog. (80 %)</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>design</source>
   <translation>modelo</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/water.py" />
   <source>Water heights at a step, or high and low waters.</source>
   <translation>Alturas del agua a intervalos fijos, o pleamares y bajamares.</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/water.py" />
   <source>such as 6m, 1h or 1d (default: 1h)</source>
   <translation>por ejemplo 6m, 1h o 1d (predeterminado: 1h)</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/water.py" />
   <source>high and low waters instead</source>
   <translation>pleamares y bajamares en su lugar</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/water.py" />
   <source>with --turns: also when the ramp begins and stops working</source>
   <translation>con --turns: también cuándo la rampa empieza y deja de servir</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/water.py" />
   <source>with --turns: also slack, estimated by the place's own lags</source>
   <translation>con --turns: también la estoa, estimada con los retrasos propios del lugar</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/water.py" />
   <source>{option} goes with --turns; add it, or leave {option} out</source>
   <translation>{option} va con --turns; añádalo, o quite {option}</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/water.py" />
   <source>{place}: the place file has no {table}; add it, or leave {option} out</source>
   <translation>{place}: el archivo de lugar no tiene {table}; añádala, o quite {option}</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/water.py" />
   <source>water above {datum}</source>
   <translation>agua sobre {datum}</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/water.py" />
   <source>high and low water above {datum}</source>
   <translation>pleamares y bajamares sobre {datum}</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/water.py" />
   <source>  no high or low water in this span</source>
   <translation>  ninguna pleamar ni bajamar en este periodo</translation>
  </message>
  <message>
   <location filename="planner/cli/commands/water.py" />
   <source>Slack {when}.</source>
   <translation>Estoa {when}.</translation>
  </message>
  <message>
   <location filename="planner/cli/entry.py" />
   <source>a library or a file of the program does not load ({error}); find out what is wrong: fullshell doctor</source>
   <translation>una biblioteca o un archivo del programa no carga ({error}); averigüe qué falla: fullshell doctor</translation>
  </message>
  <message>
   <location filename="planner/cli/entry.py" />
   <source>this is a fault in the program itself, not in your input: {kind}: {error}; look whether its files are whole: fullshell doctor; if they are, set FULLSHELL_TRACEBACK=1 to see where, and report it</source>
   <translation>es un fallo del propio programa, no de lo que usted indicó: {kind}: {error}; mire si sus archivos están enteros: fullshell doctor; si lo están, ponga FULLSHELL_TRACEBACK=1 para ver dónde, e informe de ello</translation>
  </message>
  <message>
   <location filename="planner/cli/entry.py" />
   <source>the output could not be written: {strerror}; send it somewhere else</source>
   <translation>no se pudieron escribir los resultados: {strerror}; envíelos a otro sitio</translation>
  </message>
  <message>
   <location filename="planner/cli/out_files.py" />
   <source>{others} or {last}</source>
   <translation>{others} o {last}</translation>
  </message>
  <message>
   <location filename="planner/cli/out_files.py" />
   <source>"{given}" is not a {known} file name</source>
   <translation>"{given}" no es un nombre de archivo {known}</translation>
  </message>
  <message>
   <location filename="planner/cli/out_files.py" />
   <source>(default: m)</source>
   <translation>(predeterminado: m)</translation>
  </message>
  <message>
   <location filename="planner/cli/out_files.py" />
   <source>{out}: there is no folder {parent}; make it first</source>
   <translation>{out}: no existe la carpeta {parent}; créela primero</translation>
  </message>
  <message>
   <location filename="planner/cli/parser.py" />
   <source>Plans crab trapping trips around water, light, rules and how full the crabs should be. Without a job it opens the window, on a place file when that is all there is; on a machine without a screen it prints the ranked plans of that place, or of the demo place, and draws the window to a file.</source>
   <translation>Planea salidas con nasas de cangrejo según el agua, la luz, las normas y cuán llenos deberían estar los cangrejos. Sin una tarea abre la ventana, en un archivo de lugar si no se le da nada más; en un equipo sin pantalla escribe los planes, por orden, de ese lugar o del lugar de demostración, y dibuja la ventana en un archivo.</translation>
  </message>
  <message>
   <location filename="planner/cli/parser.py" />
   <source>PLACE is a place file (.toml) or the name of a place in your book; LOG is a logbook file or a haul table (CSV). Exit status: 0 done, 2 the command line is wrong, 3 the input is wrong.</source>
   <translation>PLACE es un archivo de lugar (.toml) o el nombre de un lugar de su libro de lugares; LOG es un archivo de registro o una tabla de recogidas (CSV). Código al terminar: 0 hecho, 2 la línea de órdenes es incorrecta, 3 los datos de entrada son incorrectos.</translation>
  </message>
  <message>
   <location filename="planner/cli/parser.py" />
   <source>usage: </source>
   <translation>uso: </translation>
  </message>
  <message>
   <location filename="planner/cli/parser.py" />
   <source>positional arguments</source>
   <translation>argumentos por posición</translation>
  </message>
  <message>
   <location filename="planner/cli/parser.py" />
   <source>options</source>
   <translation>opciones</translation>
  </message>
  <message>
   <location filename="planner/cli/parser.py" />
   <source>show this help message and exit</source>
   <translation>muestra esta ayuda y termina</translation>
  </message>
  <message>
   <location filename="planner/cli/parser.py" />
   <source>unrecognized arguments: %s</source>
   <translation>argumentos desconocidos: %s</translation>
  </message>
  <message>
   <location filename="planner/cli/parser.py" />
   <source>the following arguments are required: %s</source>
   <translation>faltan estos argumentos: %s</translation>
  </message>
  <message>
   <location filename="planner/cli/parser.py" />
   <source>argument %(argument_name)s: %(message)s</source>
   <translation>argumento %(argument_name)s: %(message)s</translation>
  </message>
  <message>
   <location filename="planner/cli/parser.py" />
   <source>expected one argument</source>
   <translation>le falta su valor</translation>
  </message>
  <message>
   <location filename="planner/cli/parser.py" />
   <source>expected at least one argument</source>
   <translation>le falta al menos un valor</translation>
  </message>
  <message>
   <location filename="planner/cli/parser.py" />
   <source>ignored explicit argument %r</source>
   <translation>no lleva valor (se encontró %r)</translation>
  </message>
  <message>
   <location filename="planner/cli/parser.py" />
   <source>not allowed with argument %s</source>
   <translation>no se admite junto con %s</translation>
  </message>
  <message>
   <location filename="planner/cli/parser.py" />
   <source>invalid %(type)s value: %(value)r</source>
   <translation>valor no válido de %(type)s: %(value)r</translation>
  </message>
  <message>
   <location filename="planner/cli/parser.py" />
   <source>invalid choice: %(value)r (choose from %(choices)s)</source>
   <translation>opción no válida: %(value)r (elija entre %(choices)s)</translation>
  </message>
  <message>
   <location filename="planner/cli/parser.py" />
   <source>{message}; see {prog} --help</source>
   <translation>{message}; consulte {prog} --help</translation>
  </message>
  <message>
   <location filename="planner/cli/parser.py" />
   <source>show the program's version number and exit</source>
   <translation>muestra el número de versión del programa y termina</translation>
  </message>
  <message>
   <location filename="planner/cli/parser.py" />
   <source>jobs</source>
   <translation>tareas</translation>
  </message>
  <message>
   <location filename="planner/cli/parser.py" />
   <source>{files} were given, and the window opens one; give one</source>
   <translation>se dieron {files} y la ventana abre uno; dé uno solo</translation>
  </message>
  <message>
   <location filename="planner/cli/parser.py" />
   <source>place file</source>
   <translation>archivo de lugar</translation>
  </message>
  <message>
   <location filename="planner/cli/parser.py" />
   <source>place files</source>
   <translation>archivos de lugar</translation>
  </message>
  <message>
   <location filename="planner/cli/spans.py" />
   <source>"{given}" is outside the calendar; give a year such as 2026</source>
   <translation>"{given}" queda fuera del calendario; indique un año, por ejemplo 2026</translation>
  </message>
  <message>
   <location filename="planner/cli/spans.py" />
   <source>"{given}" is not a step; write a number with s, m, h or d, such as 6m or 1h</source>
   <translation>"{given}" no es un intervalo; escriba un número con s, m, h o d, por ejemplo 6m o 1h</translation>
  </message>
  <message>
   <location filename="planner/cli/spans.py" />
   <source>--every gives {count} values; take a longer step or fewer days, for at most {max_values}</source>
   <translation>--every da {count} valores; tome un intervalo más largo o menos días, para {max_values} como máximo</translation>
  </message>
  <message>
   <location filename="planner/cli/spans.py" />
   <source> (today, as it was left out)</source>
   <translation> (hoy, porque se omitió)</translation>
  </message>
  <message>
   <location filename="planner/cli/spans.py" />
   <source>give --from as well</source>
   <translation>indique también --from</translation>
  </message>
  <message>
   <location filename="planner/cli/spans.py" />
   <source>exchange them</source>
   <translation>intercámbielos</translation>
  </message>
  <message>
   <location filename="planner/cli/spans.py" />
   <source>--from {begin}{today} is after --to {end}; {remedy}</source>
   <translation>--from {begin}{today} es posterior a --to {end}; {remedy}</translation>
  </message>
  <message>
   <location filename="planner/cli/spans.py" />
   <source>--from {begin} --to {end} is {days} days; ask for at most {most}</source>
   <translation>--from {begin} --to {end} son {days} días; pida {most} como máximo</translation>
  </message>
  <message>
   <location filename="planner/cli/spans.py" />
   <source>"{given}" is not an instant; write it like 2026-08-14T06:30 (local time of the place) or 2026-08-14T10:30Z</source>
   <translation>"{given}" no es un instante; escríbalo como 2026-08-14T06:30 (hora local del lugar) o 2026-08-14T10:30Z</translation>
  </message>
  <message>
   <location filename="planner/cli/spans.py" />
   <source>"{given}" is not a date; write it like 2026-08-14</source>
   <translation>"{given}" no es una fecha; escríbala como 2026-08-14</translation>
  </message>
  <message>
   <location filename="planner/cli/window_libraries.py" />
   <source>the window needs {missing}; install the program with its window: pip install "fullshell[window]"</source>
   <translation>la ventana necesita {missing}; instale el programa con su ventana: pip install "fullshell[window]"</translation>
  </message>
  <message>
   <location filename="planner/cli/window_libraries.py" />
   <source>the window's libraries do not load ({error}); find out what is missing: fullshell doctor</source>
   <translation>las bibliotecas de la ventana no se cargan ({error}); averigüe qué falta: fullshell doctor</translation>
  </message>
  <message>
   <location filename="planner/cli/window_libraries.py" />
   <source> and </source>
   <translation> y </translation>
  </message>
  <message>
   <location filename="planner/constituents/names.py" />
   <source>{name!r} is not a constituent this program knows{hint}</source>
   <translation>{name!r} no es un constituyente que este programa conozca{hint}</translation>
  </message>
  <message>
   <location filename="planner/constituents/names.py" />
   <source>; near it: {near}</source>
   <translation>; parecidos: {near}</translation>
  </message>
  <message>
   <location filename="planner/constituents/pasting.py" />
   <source>line {number}: {name} has fewer numbers than the others</source>
   <translation>línea {number}: {name} tiene menos números que los demás</translation>
  </message>
  <message>
   <location filename="planner/constituents/pasting.py" />
   <source>{name} is there twice (also in line {line})</source>
   <translation>{name} aparece dos veces (también en la línea {line})</translation>
  </message>
  <message>
   <location filename="planner/constituents/pasting.py" />
   <source>{name} has a negative amplitude, {amplitude:g}</source>
   <translation>{name} tiene una amplitud negativa, {amplitude:g}</translation>
  </message>
  <message>
   <location filename="planner/constituents/pasting.py" />
   <source>{name} has a lag of {lag:g} degrees</source>
   <translation>{name} tiene un desfase de {lag:g} grados</translation>
  </message>
  <message>
   <location filename="planner/constituents/pasting.py" />
   <source>The lags are headed as local: give the clock they were worked out in.</source>
   <translation>El encabezado dice que los desfases son locales: indique el reloj en que se calcularon.</translation>
  </message>
  <message>
   <location filename="planner/constituents/pasting.py" />
   <source>line {number}: {name} has no amplitude and lag</source>
   <translation>línea {number}: {name} no tiene amplitud ni desfase</translation>
  </message>
  <message>
   <location filename="planner/constituents/pasting.py" />
   <source>line {number}: {reason}</source>
   <translation>línea {number}: {reason}</translation>
  </message>
  <message>
   <location filename="planner/constituents/pasting.py" />
   <source>There are two columns of lags; the first was taken.</source>
   <translation>Hay dos columnas de desfases; se tomó la primera.</translation>
  </message>
  <message>
   <location filename="planner/constituents/pasting.py" />
   <source>; that is the mean level</source>
   <translation>; ese es el nivel medio</translation>
  </message>
  <message>
   <location filename="planner/constituents/pasting.py" />
   <source>line {number}: no constituent known in “{said}”{mean}</source>
   <translation>línea {number}: ningún constituyente conocido en «{said}»{mean}</translation>
  </message>
  <message>
   <location filename="planner/errors.py" />
   <source> (found {shown})</source>
   <translation> (se encontró {shown})</translation>
  </message>
  <message>
   <location filename="planner/errors.py" />
   <source>problem</source>
   <translation>problema</translation>
  </message>
  <message>
   <location filename="planner/errors.py" />
   <source>problems</source>
   <translation>problemas</translation>
  </message>
  <message>
   <location filename="planner/handouts/calendar.py" />
   <source>Check forecast, rules and gear</source>
   <translation>Revisar pronóstico, normas y equipo</translation>
  </message>
  <message>
   <location filename="planner/handouts/calendar.py" />
   <source>Leave with fresh bait {clock}.</source>
   <translation>Salga con cebo fresco: {clock}.</translation>
  </message>
  <message>
   <location filename="planner/handouts/calendar.py" />
   <source>Set {set_at} {set_zone}, haul {haul_at} {haul_zone} ({key}); soak {soak}.</source>
   <translation>Calar {set_at} {set_zone}, recoger {haul_at} {haul_zone} ({key}); tiempo en el agua: {soak}.</translation>
  </message>
  <message>
   <location filename="planner/handouts/calendar.py" />
   <source>Read the marine forecast, wear life jackets, leave a float plan ashore.</source>
   <translation>Lea el pronóstico marino, lleve puesto el chaleco salvavidas y deje en tierra un plan de navegación.</translation>
  </message>
  <message>
   <location filename="planner/handouts/calendar.py" />
   <source>Set crab traps</source>
   <translation>Calar nasas de cangrejo</translation>
  </message>
  <message>
   <location filename="planner/handouts/calendar.py" />
   <source>Haul crab traps</source>
   <translation>Recoger nasas de cangrejo</translation>
  </message>
  <message>
   <location filename="planner/handouts/calendar.py" />
   <source>This place and its water are invented.</source>
   <translation>Este lugar y su agua son inventados.</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Common practice, but for the figures of this plan; the rules come first.</source>
   <translation>Práctica común, salvo las cifras de este plan; las normas van primero.</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Lines are a third longer than the water is deep at the highest of the soak; more in a strong current.</source>
   <translation>Cada cabo mide un tercio más que la mayor profundidad del agua mientras la nasa está calada; más si la corriente es fuerte.</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>set, back by {set_back}; haul, back by {haul_back} {zone}</source>
   <translation>calada: de vuelta antes del {set_back}; recogida: de vuelta antes del {haul_back} {zone}</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Open cuts and warm water: bacteria there can make a cut dangerous within a day. Wash it, and see a doctor at once if it reddens or swells.</source>
   <translation>Heridas abiertas y agua cálida: las bacterias que hay en ella pueden volver peligrosa una herida en menos de un día. Lávela y acuda al médico de inmediato si se enrojece o se hincha.</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>{metres_to:.1f} {length}</source>
   <translation>{metres_to:.1f} {length}</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Rules here</source>
   <translation>Normas de aquí</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>{bait} in {labels}</source>
   <translation>{bait} en {labels}</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>; as on the last trip: {by_trap}</source>
   <translation>; como en la última salida: {by_trap}</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Safety</source>
   <translation>Seguridad</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Cook live crabs only, and thoroughly.</source>
   <translation>Cueza solo cangrejos vivos, y cuézalos bien.</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Where an advisory says so, throw away the soft parts and the cooking water.</source>
   <translation>Donde un aviso sanitario lo diga, tire las partes blandas y el agua de cocción.</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Food and health</source>
   <translation>Alimentos y salud</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Traps, lines and labels</source>
   <translation>Nasas, cabos y etiquetas</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Bait and tools</source>
   <translation>Cebo y herramientas</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Not written down for this place: {missing}. Ask the agency, and write the answers in the place book.</source>
   <translation>Sin anotar para este lugar: {missing}. Pregunte a la autoridad pesquera y escriba las respuestas en el libro de lugares.</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>{count} traps{words}</source>
   <translation>{count} nasas{words}</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>{count} floats, each with the marks that the rules ask for, and the trap's label: {listed}</source>
   <translation>{count} boyas, cada una con las marcas que piden las normas y la etiqueta de la nasa: {listed}</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Line weighted or sinking, no slack floating</source>
   <translation>Cabo lastrado o que se hunda, sin tramo suelto a flote</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Every trap looked over: doors shut, escape openings clear, weak cord whole</source>
   <translation>Todas las nasas revisadas: puertas cerradas, aberturas de escape despejadas, cordel débil de escape entero</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>{spares} spare floats and lines, a spare label, a knife</source>
   <translation>{spares} boyas y cabos de repuesto, una etiqueta de repuesto, un cuchillo</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Fresh bait for {kits} traps and {spares} over{usual}; aboard by {leave}</source>
   <translation>Cebo fresco para {kits} nasas y {spares} más{usual}; a bordo antes de las {leave}</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Gauge for the legal size, and know where it is measured</source>
   <translation>Calibre para la talla legal, y saber dónde se mide</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Gloves and tongs</source>
   <translation>Guantes y pinzas</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Hook for the floats, and a measuring stick or lead line</source>
   <translation>Bichero para las boyas, y una vara de medir o un escandallo</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Basket or box with wet cover and shade; ice for the way home</source>
   <translation>Cesta o caja con tapa húmeda y sombra; hielo para la vuelta</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Tally sheet and pencil; catch record where the law asks</source>
   <translation>Hoja de recuento y lápiz; registro de capturas donde la ley lo pida</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>A life jacket that fits for everybody, worn</source>
   <translation>Un chaleco salvavidas de su talla para cada persona, puesto</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Float plan left ashore ({both}); if not heard of by {alarm}, call for help</source>
   <translation>Plan de navegación dejado en tierra ({both}); si el {alarm} aún no hay noticias, hay que pedir ayuda</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Charged phone or radio, light, whistle; engine cut-off worn</source>
   <translation>Teléfono o radio con carga, luz, silbato; cordón de corte del motor puesto</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Fuel for both ways and a third over, anchor, oar, bailer, plug</source>
   <translation>Combustible para ida y vuelta y un tercio más, ancla, remo, achicador, tapón</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Water temperature unknown. In cold water a fall overboard takes the breath and the strength within minutes: dress for the water, not the air.</source>
   <translation>Temperatura del agua desconocida. En agua fría, una caída por la borda quita el aliento y las fuerzas en minutos: vístase para el agua, no para el aire.</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Local advisory read: which water, which crabs, how many</source>
   <translation>Aviso sanitario local leído: qué aguas, qué cangrejos, cuántos</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Crabs kept alive, damp, shaded and cool; dead ones thrown out</source>
   <translation>Cangrejos vivos, húmedos, a la sombra y frescos; los muertos, fuera</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Open cuts covered, clean water and soap aboard</source>
   <translation>Heridas abiertas cubiertas, agua limpia y jabón a bordo</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>{spot}, {traps}: {line} of line each, for water up to {deepest} deep</source>
   <translation>{spot}, {traps}: {line} de cabo para cada una, para agua de hasta {deepest} de profundidad</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Line a third longer than the water is deep at high water</source>
   <translation>Cabo un tercio más largo que la profundidad del agua en pleamar</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Marine forecast and small-craft warnings read, wind against tide minded</source>
   <translation>Pronóstico marino y avisos para embarcaciones menores leídos; cuidado con el viento contra la marea</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Marine forecast and small-craft warnings read on both days, wind against tide minded</source>
   <translation>Pronóstico marino y avisos para embarcaciones menores leídos los dos días; cuidado con el viento contra la marea</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Cold water, about {temperature}: a fall overboard takes the breath and the strength within minutes. Dress for the water, not the air.</source>
   <translation>Agua fría, cerca de {temperature}: una caída por la borda quita el aliento y las fuerzas en minutos. Vístase para el agua, no para el aire.</translation>
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>traps</source>
   <translation>nasas</translation>
  </message>
  <message>
   <location filename="planner/handouts/deck.py" />
   <source>This trip has no traps yet: add them first, then take it on deck.</source>
   <translation>Esta salida todavía no tiene nasas: añádalas primero y llévesela después a cubierta.</translation>
  </message>
  <message>
   <location filename="planner/handouts/rules.py" />
   <source>Checked {day} {year}{where}</source>
   <translation>Comprobadas el {day} {year}{where}</translation>
  </message>
  <message>
   <location filename="planner/handouts/rules.py" />
   <source>{on}: {months} months ago, and rules change. Check with the agency again.</source>
   <translation>{on}: hace {months} meses, y las normas cambian. Vuelva a confirmarlas con la autoridad pesquera.</translation>
  </message>
  <message>
   <location filename="planner/handouts/rules.py" />
   <source>No date entered for when these rules were checked: check with the agency.</source>
   <translation>No se anotó la fecha en que se comprobaron estas normas: confírmelas con la autoridad pesquera.</translation>
  </message>
  <message>
   <location filename="planner/handouts/rules.py" />
   <source>{on}, which is still to come: correct it, and check with the agency.</source>
   <translation>{on}, fecha que aún no ha llegado: corríjala y consulte a la autoridad pesquera.</translation>
  </message>
  <message>
   <location filename="planner/handouts/rules.py" />
   <source>number of traps</source>
   <translation>número de nasas</translation>
  </message>
  <message>
   <location filename="planner/handouts/rules.py" />
   <source>At most {max_traps} traps.</source>
   <translation>Como máximo, {max_traps} nasas.</translation>
  </message>
  <message>
   <location filename="planner/handouts/rules.py" />
   <source>soak limit</source>
   <translation>tiempo máximo en el agua</translation>
  </message>
  <message>
   <location filename="planner/handouts/rules.py" />
   <source>Haul within {max_soak_h:g} hours of the set.</source>
   <translation>Recoja dentro de las {max_soak_h:g} horas siguientes a la calada.</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>Least water {least_at}. Line: a third longer than the deepest water.{more}</source>
   <translation>Agua mínima: {least_at}. Cabo: un tercio más que la mayor profundidad del agua.{more}</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>{first} at the set, {last} at the haul</source>
   <translation>{first} en la calada, {last} en la recogida</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>; latest {to}</source>
   <translation>; a más tardar {to}</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>No spots entered: whether the traps stay covered was not checked.</source>
   <translation>No se anotaron puestos: no se comprobó si las nasas quedan siempre cubiertas.</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source> {deeper} deeper spots are not listed.</source>
   <translation> No se incluyen {deeper} puestos más profundos.</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>moon {lit}% lit</source>
   <translation>luna iluminada al {lit} %</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>Marine forecast and small-craft warnings read; life jackets worn; float plan ashore.</source>
   <translation>Pronóstico marino y avisos para embarcaciones menores leídos; chalecos salvavidas puestos; plan de navegación en tierra.</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>Cook live crabs only, and thoroughly; heed local advisories. In warm water an open cut can turn dangerous within a day: wash it, and see a doctor if it reddens.</source>
   <translation>Cueza solo cangrejos vivos, y cuézalos bien; respete los avisos sanitarios locales. En agua cálida, una herida abierta puede volverse peligrosa en menos de un día: lávela y acuda al médico si se enrojece.</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>{turn} {height} {clock}</source>
   <translation>{turn} {height} {clock}</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>and {rules} more rules in the place file</source>
   <translation>y {rules} normas más en el archivo de lugar</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>{name}: set {set_day}, haul {haul_day}</source>
   <translation>{name}: calar {set_day}, recoger {haul_day}</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>Made {day} {today.year} with Fullshell. Times on the clock of {key} ({clocks}).</source>
   <translation>Hecha el {day} {today.year} con Fullshell. Horas en el reloj de {key} ({clocks}).</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>Leave with bait</source>
   <translation>Salir con cebo</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>{at} to {to}{window}</source>
   <translation>{at} a {to}{window}</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>Haul</source>
   <translation>Recogida</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>{at} to {to}; soak {soak}</source>
   <translation>{at} a {to}; tiempo en el agua: {soak}</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>Expect</source>
   <translation>Previsto</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>{count} full keepers; light crabs {light}. Brackets hold 8 times in 10.</source>
   <translation>{count} llenos de talla; cangrejos vacíos: {light}. Lo que va entre paréntesis se cumple 8 de cada 10 veces.</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>Water about {temperature}</source>
   <translation>Agua a unos {temperature}</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>light {dawn}</source>
   <translation>alba {dawn}</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>dark {dusk}</source>
   <translation>anochecer {dusk}</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>rises {rises}</source>
   <translation>sale {rises}</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>sets {sets}</source>
   <translation>se pone {sets}</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>{length} above {datum}</source>
   <translation>{length} sobre {datum}</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>INVENTED place, water and rules: not for a real trip.</source>
   <translation>Lugar, agua y normas INVENTADOS: no valen para una salida real.</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>charted depth</source>
   <translation>sonda</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>over trap at set</source>
   <translation>sobre la nasa al calar</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>least over trap</source>
   <translation>mínimo sobre la nasa</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>over trap at haul</source>
   <translation>sobre la nasa al recoger</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>line</source>
   <comment>of a trap</comment>
   <translation>cabo</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>and {left_out} more traps, on the screen</source>
   <translation>y {left_out} nasas más, en la pantalla</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>Turns in the soak: {turns}.</source>
   <translation>Pleamares y bajamares con las nasas caladas: {turns}.</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>No turn in the soak.</source>
   <translation>Ninguna pleamar ni bajamar con las nasas caladas.</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>and {more} more warnings on the screen</source>
   <translation>y {more} avisos más en la pantalla</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>high</source>
   <translation>pleamar</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>low</source>
   <translation>bajamar</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>set</source>
   <translation>calada</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>haul</source>
   <translation>recogida</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>no spot</source>
   <translation>sin puesto</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet_pdf.py" />
   <source>Water at the spots</source>
   <translation>Agua en los puestos</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet_pdf.py" />
   <source>Water, {level_name}; grey: dark</source>
   <translation>Agua, {level_name}; gris: de noche</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet_pdf.py" />
   <source>This trip does not fit on one page: shorten the rules or the names of the place.</source>
   <translation>Esta salida no cabe en una página: acorte las normas o los nombres del lugar.</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet_pdf.py" />
   <source>Traps</source>
   <translation>Nasas</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet_pdf.py" />
   <source>Sun and moon</source>
   <translation>Sol y luna</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet_pdf.py" />
   <source>Mind</source>
   <translation>Atención</translation>
  </message>
  <message>
   <location filename="planner/handouts/sheet_pdf.py" />
   <source>None entered.</source>
   <translation>Ninguna anotada.</translation>
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>Keepers</source>
   <translation>De talla</translation>
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>Shorts</source>
   <translation>Pequeños</translation>
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>Females</source>
   <translation>Hembras</translation>
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source> (haul {day})</source>
   <translation> (recogida {day})</translation>
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>{place}, trip {name}{hauled}</source>
   <translation>{place}, salida {name}{hauled}</translation>
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>Made {day} {today.year} with Fullshell. Times on the clock of {key}.</source>
   <translation>Hecha el {day} {today.year} con Fullshell. Horas en el reloj de {key}.</translation>
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>INVENTED place: not for a real trip.</source>
   <translation>Lugar INVENTADO: no vale para una salida real.</translation>
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>People aboard</source>
   <translation>Personas a bordo</translation>
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>Water °{temperature}</source>
   <translation>Agua °{temperature}</translation>
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>Weather</source>
   <translation>Tiempo</translation>
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>One tick a crab; write the number where the boxes run out. Looked and found none: write 0. Left empty means not recorded, which is not zero.</source>
   <translation>Una marca por cangrejo; si no bastan las casillas, escriba el número. Miró y no había ninguno: escriba 0. En blanco significa no anotado, que no es lo mismo que cero.</translation>
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>Eggs (egg-bearing): count them among the females too. Judged: legal crabs looked at for fullness. Light: count them among the judged too.</source>
   <translation>Huevos (hembras con huevos): cuéntelas también entre las hembras. Examin.: los de talla cuyo llenado se miró. Vacíos: cuéntelos también entre los examinados.</translation>
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>Free shorts and protected crabs at once. {rules_caution}</source>
   <translation>Suelte de inmediato los pequeños y los cangrejos protegidos. {rules_caution}</translation>
  </message>
  <message>
   <location filename="planner/handouts/tally_pdf.py" />
   <source>Other kinds, notes</source>
   <translation>Otras especies, notas</translation>
  </message>
  <message>
   <location filename="planner/handouts/tally_pdf.py" />
   <source>Page {number} of {pages}. </source>
   <translation>Página {number} de {pages}. </translation>
  </message>
  <message>
   <location filename="planner/handouts/water_table.py" />
   <source>{name}: over the trap, {unit}</source>
   <translation>{name}: sobre la nasa, {unit}</translation>
  </message>
  <message>
   <location filename="planner/handouts/waypoints.py" />
   <source>{name}, set {day}</source>
   <translation>{name}, calada {day}</translation>
  </message>
  <message>
   <location filename="planner/handouts/waypoints.py" />
   <source>{invented}Trap spots. {tide_caution}</source>
   <translation>{invented}Puestos de las nasas. {tide_caution}</translation>
  </message>
  <message>
   <location filename="planner/handouts/waypoints.py" />
   <source>No spot of {name} has a position yet: give latitude and longitude for its spots in the place book, then write the waypoints.</source>
   <translation>Ningún puesto de {name} tiene posición todavía: dé latitud y longitud a sus puestos en el libro de lugares y escriba después los puntos (GPX).</translation>
  </message>
  <message>
   <location filename="planner/handouts/waypoints.py" />
   <source>INVENTED place: not for a real trip. </source>
   <translation>Lugar INVENTADO: no vale para una salida real. </translation>
  </message>
  <message>
   <location filename="planner/handouts/waypoints.py" />
   <source>charted depth {height} below {datum}</source>
   <translation>sonda de {height} bajo {datum}</translation>
  </message>
  <message>
   <location filename="planner/handouts/waypoints.py" />
   <source>none</source>
   <translation>ninguno</translation>
  </message>
  <message>
   <location filename="planner/handouts/waypoints.py" />
   <source>Traps: {labels}</source>
   <translation>Nasas: {labels}</translation>
  </message>
  <message>
   <location filename="planner/handouts/waypoints.py" />
   <source>{invented}Traps: {labels}; {depth}; {line} of line</source>
   <translation>{invented}Nasas: {labels}; {depth}; {line} de cabo</translation>
  </message>
  <message>
   <location filename="planner/handouts/waypoints.py" />
   <source>crab traps</source>
   <translation>nasas de cangrejo</translation>
  </message>
  <message>
   <location filename="planner/intake/grid.py" />
   <source>is a workbook of the old kind, or one behind a password</source>
   <translation>es un libro de hojas de cálculo de formato antiguo, o tiene contraseña</translation>
  </message>
  <message>
   <location filename="planner/intake/grid.py" />
   <source>save it as .xlsx without a password, or as CSV</source>
   <translation>guárdelo como .xlsx sin contraseña, o como CSV</translation>
  </message>
  <message>
   <location filename="planner/intake/grid.py" />
   <source>column {number}</source>
   <translation>columna {number}</translation>
  </message>
  <message>
   <location filename="planner/intake/grid.py" />
   <source>has {filled} cells where the heading has {width} columns</source>
   <translation>tiene {filled} celdas donde el encabezado tiene {width} columnas</translation>
  </message>
  <message>
   <location filename="planner/intake/grid.py" />
   <source>put texts that hold the separator in quotation marks, one cell a column</source>
   <translation>ponga entre comillas los textos que contengan el separador, una celda por columna</translation>
  </message>
  <message>
   <location filename="planner/intake/grid.py" />
   <source>is larger than a table can be ({max_bytes} MB)</source>
   <translation>es mayor de lo que puede ser una tabla ({max_bytes} MB)</translation>
  </message>
  <message>
   <location filename="planner/intake/grid.py" />
   <source>name a table of hauls</source>
   <translation>indique una tabla de recogidas</translation>
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>kept as it is</source>
   <translation>se conserva como está</translation>
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>trap's label</source>
   <translation>etiqueta de la nasa</translation>
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>kind of trap</source>
   <translation>modelo de nasa</translation>
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>bait</source>
   <translation>cebo</translation>
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>set: date and time</source>
   <translation>calada: fecha y hora</translation>
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>set: date</source>
   <translation>calada: fecha</translation>
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>set: time of day</source>
   <translation>calada: hora</translation>
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>hauled: date and time</source>
   <translation>recogida: fecha y hora</translation>
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>hauled: date</source>
   <translation>recogida: fecha</translation>
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>hauled: time of day</source>
   <translation>recogida: hora</translation>
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>soak in hours</source>
   <translation>horas en el agua</translation>
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>other kinds</source>
   <translation>otras especies</translation>
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>water temperature</source>
   <translation>temperatura del agua</translation>
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>{} lines have a time in the hour that the clock shows twice; read as the first of the two, or as the second where only that lies after the set</source>
   <translation>{} líneas tienen una hora que el reloj da dos veces; se leyó como la primera de las dos, o como la segunda donde solo esa es posterior a la calada</translation>
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>{} times are a spreadsheet's numbers of days and were read as such (46350.25 is 24 Nov 2026 6:00)</source>
   <translation>{} horas son números de día de una hoja de cálculo y así se leyeron (46350,25 es el 24 nov 2026 a las 6:00)</translation>
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>write it as year-month-day and clock, such as 2026-08-14 06:40</source>
   <translation>escríbalo como año-mes-día y hora, por ejemplo 2026-08-14 06:40</translation>
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>{name} (table)</source>
   <translation>{name} (tabla)</translation>
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>No name is known in the heading "{heading}". If that is a haul already, write a heading above it</source>
   <translation>No se conoce ningún nombre del encabezado «{heading}». Si eso ya es una recogida, escriba un encabezado encima</translation>
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>No column was taken as a count, so these hauls come without their crabs. A table needs a row for each trap and a column such as keepers</source>
   <translation>Ninguna columna se tomó como recuento, así que estas recogidas llegan sin sus cangrejos. Una tabla necesita una fila por nasa y una columna como keepers</translation>
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>is a time of day without a date</source>
   <translation>es una hora sin fecha</translation>
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>has no time of day</source>
   <translation>no tiene hora</translation>
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>add the clock time, such as 06:40</source>
   <translation>añada la hora, por ejemplo 06:40</translation>
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>is not a soak in hours</source>
   <translation>no es un tiempo en el agua en horas</translation>
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>write hours, such as 24</source>
   <translation>escriba horas, por ejemplo 24</translation>
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>{} lines name no place; taken as of the place above</source>
   <translation>{} líneas no nombran lugar; se toman como del lugar de arriba</translation>
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>{} cells with a dash or ? taken as not recorded</source>
   <translation>{} celdas con un guion o un ? se tomaron como no anotadas</translation>
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>fill in its date</source>
   <translation>rellene su fecha</translation>
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>is not a time</source>
   <translation>no es una hora válida</translation>
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>save it as CSV in UTF-8, or as .xlsx</source>
   <translation>guárdelo como CSV en UTF-8, o como .xlsx</translation>
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>commas</source>
   <translation>comas</translation>
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>semicolons</source>
   <translation>puntos y comas</translation>
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>tabs</source>
   <translation>tabuladores</translation>
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>upright strokes</source>
   <translation>barras verticales</translation>
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>, {at} lines above the heading left out</source>
   <translation>, se dejaron fuera {at} líneas sobre el encabezado</translation>
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>holds zero bytes; this is no text</source>
   <translation>contiene bytes nulos; esto no es texto</translation>
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>is empty</source>
   <translation>está vacío</translation>
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>begin it with a heading: trip, place, trap, keepers...</source>
   <translation>empiécelo con un encabezado: trip, place, trap, keepers...</translation>
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>{encodings} text separated by {shown}{above}</source>
   <translation>texto {encodings} separado por {shown}{above}</translation>
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>is not {encodings} text</source>
   <translation>no es texto {encodings}</translation>
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>is no text</source>
   <translation>no es texto</translation>
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>save it anew as .xlsx, or as CSV</source>
   <translation>guárdelo de nuevo como .xlsx, o como CSV</translation>
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>, of {others} sheets</source>
   <translation>, de {others} hojas</translation>
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>is not a workbook that can be read ({kind})</source>
   <translation>no es un libro de hojas de cálculo que se pueda leer ({kind})</translation>
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>has no sheet with anything in it</source>
   <translation>no tiene ninguna hoja con contenido</translation>
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>name another file</source>
   <translation>indique otro archivo</translation>
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>unpacks to more than a table of hauls can hold</source>
   <translation>descomprimido ocupa más de lo que puede contener una tabla de recogidas</translation>
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>is not an .xlsx workbook</source>
   <translation>no es un libro .xlsx</translation>
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>row {number}, {heading}</source>
   <translation>fila {number}, {heading}</translation>
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>holds a formula without its result</source>
   <translation>contiene una fórmula sin su resultado</translation>
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>open the workbook in a spreadsheet program and save it there</source>
   <translation>abra el libro en un programa de hojas de cálculo y guárdelo allí</translation>
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>workbook, sheet "{name}"{left}</source>
   <translation>libro de cálculo, hoja "{name}"{left}</translation>
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>is a damaged workbook</source>
   <translation>es un libro de hojas de cálculo dañado</translation>
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>is one cell over several rows</source>
   <translation>es una sola celda para varias filas</translation>
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>give each haul a cell of its own</source>
   <translation>dé a cada recogida su propia celda</translation>
  </message>
  <message>
   <location filename="planner/logbook/backups.py" />
   <source>The backup {path} could not be verified; {logbook} was left as it is. Check the disk and try again.</source>
   <translation>No se pudo verificar la copia de seguridad {path}; {logbook} se dejó como estaba. Revise el disco e inténtelo de nuevo.</translation>
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>haul {number}, {column}</source>
   <translation>recogida {number}, {column}</translation>
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>There was no log in {path}, so an empty one was begun. Backups of an earlier log are there: File menu, Backups of the log.</source>
   <translation>No había ningún registro en {path}, así que se empezó uno vacío. Hay copias de seguridad de un registro anterior: menú Archivo, Copias de seguridad del registro.</translation>
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>entry of trip {name}</source>
   <translation>anotación de la salida {name}</translation>
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>details of trip {name}</source>
   <translation>datos de la salida {name}</translation>
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>history of trap {label}</source>
   <translation>historial de la nasa {label}</translation>
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>import of {name}</source>
   <translation>importación de {name}</translation>
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>Redo</source>
   <translation>Rehacer</translation>
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>trip {name}</source>
   <translation>salida {name}</translation>
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>Today's backup of the log could not be made: {error}</source>
   <translation>No se pudo hacer la copia de seguridad de hoy del registro: {error}</translation>
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>delete of trip {name}</source>
   <translation>eliminación de la salida {name}</translation>
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>trap {label}</source>
   <translation>nasa {label}</translation>
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>return from the bin</source>
   <translation>devolución desde la papelera</translation>
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>emptying of the bin</source>
   <translation>vaciado de la papelera</translation>
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>return to a backup</source>
   <translation>vuelta a una copia de seguridad</translation>
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>before restoring</source>
   <translation>antes de restaurar</translation>
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>{path} was opened for reading only; open it for writing to change it.</source>
   <translation>{path} se abrió solo para lectura; ábralo para escritura si quiere cambiarlo.</translation>
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>metres</source>
   <translation>metros</translation>
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>feet</source>
   <translation>pies</translation>
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>degrees Celsius</source>
   <translation>grados Celsius</translation>
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>degrees Fahrenheit</source>
   <translation>grados Fahrenheit</translation>
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>write a plain number in {unit}, such as 1.5</source>
   <translation>escriba un número sin más en {unit}, por ejemplo 1.5</translation>
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>is outside {low:g} to {high:g}</source>
   <translation>queda fuera de {low:g} a {high:g}</translation>
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>give it in {unit}</source>
   <translation>indíquelo en {unit}</translation>
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>is not a whole number of crabs, zero or more</source>
   <translation>no es un número entero de cangrejos, cero o más</translation>
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>write digits such as 3, or leave it empty when it was not recorded</source>
   <translation>escriba cifras, por ejemplo 3, o déjelo en blanco si no se anotó</translation>
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>is more than one trap can hold ({max_count})</source>
   <translation>es más de lo que cabe en una nasa ({max_count})</translation>
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>check the digits</source>
   <translation>revise las cifras</translation>
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>is not a number</source>
   <translation>no es un número</translation>
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>is not in the years {first} to {last}</source>
   <translation>no está en los años {first} a {last}</translation>
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>check the year</source>
   <translation>revise el año</translation>
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>is a local time at a place whose time zone is not known</source>
   <translation>es una hora local en un lugar cuyo huso horario no se conoce</translation>
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>add the offset from UTC, such as -04:00, or add the place to the place book</source>
   <translation>añada la diferencia con UTC, por ejemplo -04:00, o añada el lugar al libro de lugares</translation>
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>does not exist in {key}: the clocks were put forward over it</source>
   <translation>no existe en {key}: el reloj se adelantó y la saltó</translation>
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>correct the time, or add the offset from UTC, such as {offset}</source>
   <translation>corrija la hora, o añada la diferencia con UTC, por ejemplo {offset}</translation>
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>is locked by another program; close that and try again</source>
   <translation>está bloqueado por otro programa; cierre ese programa e inténtelo de nuevo</translation>
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>cannot be written because the disk is full; make room and try again</source>
   <translation>no se puede escribir porque el disco está lleno; libere espacio e inténtelo de nuevo</translation>
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>cannot be written; check the permissions of the file and its folder</source>
   <translation>no se puede escribir; revise los permisos del archivo y de su carpeta</translation>
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>cannot be opened; check the permissions of the file and its folder</source>
   <translation>no se puede abrir; revise los permisos del archivo y de su carpeta</translation>
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>cannot be opened; check that its folder exists and can be written</source>
   <translation>no se puede abrir; compruebe que su carpeta existe y que se puede escribir en ella</translation>
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>cannot be reached; check the disk or network drive and try again</source>
   <translation>no se puede alcanzar; revise el disco o la unidad de red e inténtelo de nuevo</translation>
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>{path} {sentences}. Nothing was changed.</source>
   <translation>{path} {sentences}. No se cambió nada.</translation>
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>{path} is damaged and was left exactly as it is. Keep a copy of it, and open a backup or import an exported haul table.</source>
   <translation>{path} está dañado y se dejó exactamente como está. Guarde una copia y abra una copia de seguridad o importe una tabla de recogidas exportada.</translation>
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>{path} is not a logbook and was left as it is; name another file.</source>
   <translation>{path} no es un archivo de registro y se dejó como estaba; indique otro archivo.</translation>
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>{path} was written by a later version of Fullshell and was left as it is; open it with that version.</source>
   <translation>{path} lo escribió una versión posterior de Fullshell y se dejó como estaba; ábralo con esa versión.</translation>
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>{path} cannot be opened ({reason}). Nothing was changed.</source>
   <translation>No se puede abrir {path} ({reason}). No se cambió nada.</translation>
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>{path}: there is no such file; check the name and the folder.</source>
   <translation>{path}: no existe ese archivo; revise el nombre y la carpeta.</translation>
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>before schema {latest_version}</source>
   <translation>antes del esquema {latest_version}</translation>
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>{path} is open in another window, so it is shown here for reading only. Close the other window to write here.</source>
   <translation>{path} está abierto en otra ventana, así que aquí se muestra solo para lectura. Cierre la otra ventana para escribir aquí.</translation>
  </message>
  <message>
   <location filename="planner/logbook/journal.py" />
   <source>Undo {change}</source>
   <translation>Deshacer {change}</translation>
  </message>
  <message>
   <location filename="planner/logbook/journal.py" />
   <source>Redo {change}</source>
   <translation>Rehacer {change}</translation>
  </message>
  <message>
   <location filename="planner/logbook/portable.py" />
   <source>{path} is the log itself; choose another name for the copy.</source>
   <translation>{path} es el propio registro; elija otro nombre para la copia.</translation>
  </message>
  <message>
   <location filename="planner/logbook/portable.py" />
   <source>The copy {path} is not whole; check the disk.</source>
   <translation>La copia {path} no está completa; revise el disco.</translation>
  </message>
  <message>
   <location filename="planner/logbook/reading.py" />
   <source>line {line}, {column}</source>
   <translation>línea {line}, {column}</translation>
  </message>
  <message>
   <location filename="planner/logbook/reading.py" />
   <source>is larger than a haul table can be ({max_table_bytes} MB)</source>
   <translation>es mayor de lo que puede ser una tabla de recogidas ({max_table_bytes} MB)</translation>
  </message>
  <message>
   <location filename="planner/logbook/reading.py" />
   <source>there is no such file</source>
   <translation>no existe ese archivo</translation>
  </message>
  <message>
   <location filename="planner/logbook/reading.py" />
   <source>check the name and the folder</source>
   <translation>revise el nombre y la carpeta</translation>
  </message>
  <message>
   <location filename="planner/logbook/reading.py" />
   <source>is a folder, not a file</source>
   <translation>es una carpeta, no un archivo</translation>
  </message>
  <message>
   <location filename="planner/logbook/reading.py" />
   <source>name a haul table or logbook in it</source>
   <translation>indique una tabla de recogidas o un archivo de registro que esté en ella</translation>
  </message>
  <message>
   <location filename="planner/logbook/reading.py" />
   <source>cannot be read: {reason}</source>
   <translation>no se puede leer: {reason}</translation>
  </message>
  <message>
   <location filename="planner/logbook/reading.py" />
   <source>check the name and the permissions</source>
   <translation>revise el nombre y los permisos</translation>
  </message>
  <message>
   <location filename="planner/logbook/reading.py" />
   <source>name a haul table (CSV)</source>
   <translation>indique una tabla de recogidas (CSV)</translation>
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>unknown place</source>
   <translation>lugar desconocido</translation>
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>single crabs</source>
   <translation>cangrejos sueltos</translation>
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>entries of trap histories</source>
   <translation>anotaciones de historiales de nasas</translation>
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>entries of the bin</source>
   <translation>entradas de la papelera</translation>
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>The log was damaged. It was set aside whole as {name}, and what could be read was taken over: {hauls} hauls of {trips} trips; {missing}. The report is {report}.{newest}</source>
   <translation>El registro estaba dañado. Se apartó entero como {name}, y se pasó a uno nuevo lo que se pudo leer: {hauls} recogidas de {trips} salidas; {missing}. El informe es {report}.{newest}</translation>
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>The log {path} was found damaged on {now:%d %b %Y %H:%M} UTC.</source>
   <translation>El registro {path} se encontró dañado el {now:%d %b %Y %H:%M} UTC.</translation>
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>The damaged file is kept as it was: {aside}</source>
   <translation>El archivo dañado se conserva como estaba: {aside}</translation>
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>Taken over into a new log:</source>
   <translation>Pasado a un registro nuevo:</translation>
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>What could be undone before can be undone no more.</source>
   <translation>Lo que antes se podía deshacer ya no se puede deshacer.</translation>
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>parts of it could not be read</source>
   <translation>hubo partes que no se pudieron leer</translation>
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>nothing seems to be lost</source>
   <translation>parece que no se perdió nada</translation>
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source> A backup of {newest_backup:%d %b %Y} can be restored from the File menu.</source>
   <translation> Desde el menú Archivo se puede restaurar una copia de seguridad del {newest_backup:%d %b %Y}.</translation>
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>Could not be read (some of these may never have been there):</source>
   <translation>No se pudo leer (puede que parte de ello nunca existiera):</translation>
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>Every row could be read.</source>
   <translation>Se pudieron leer todas las filas.</translation>
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>The newest backup is of {newest_backup:%d %b %Y %H:%M} UTC.</source>
   <translation>La copia de seguridad más reciente es del {newest_backup:%d %b %Y %H:%M} UTC.</translation>
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>rescued trip {trip_id}</source>
   <translation>salida rescatada {trip_id}</translation>
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>the rescued log is not whole</source>
   <translation>el registro rescatado no está completo</translation>
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>{table} {low}: {error}; it read {shown}</source>
   <translation>{table} {low}: {error}; decía {shown}</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>correct it</source>
   <translation>corríjalo</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>crab {number}, {name}</source>
   <translation>cangrejo {number}, {name}</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>is not less than the whole crab ({weight_g:g} g)</source>
   <translation>no es menos que el cangrejo entero ({weight_g:g} g)</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>fill in how many were picked, or leave both empty</source>
   <translation>anote cuántos se abrieron, o deje los dos en blanco</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>give every haul its trip's name, such as 14 Aug</source>
   <translation>ponga a cada recogida el nombre de su salida, por ejemplo 14 ago</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>light counts those of the picked that were light</source>
   <translation>light cuenta, de los abiertos, los que estaban vacíos</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>give degrees Celsius</source>
   <translation>indique grados Celsius</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>use one of {trap_events}</source>
   <translation>use uno de {trap_events}</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>give a count from 0 to {max_count}, or none when it was not recorded</source>
   <translation>indique un número de 0 a {max_count}, o ninguno si no se anotó</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>correct one of the two weights</source>
   <translation>corrija uno de los dos pesos</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>needs the number of crabs picked</source>
   <translation>necesita el número de cangrejos abiertos</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>give the trap the label it carries, such as A3</source>
   <translation>ponga a la nasa la etiqueta que lleva, por ejemplo A3</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>give the name of the place</source>
   <translation>indique el nombre del lugar</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>is not after the trap was set ({set_at})</source>
   <translation>no es posterior a la calada de la nasa ({set_at})</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>correct one of the two times</source>
   <translation>corrija una de las dos horas</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>needs the number of crabs looked at</source>
   <translation>necesita el número de cangrejos examinados</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>fill in judged, or leave both empty</source>
   <translation>rellene judged, o deje los dos en blanco</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>is more than the females ({females})</source>
   <translation>es más que las hembras ({females})</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>females counts every female, sponge those of them with eggs</source>
   <translation>females cuenta todas las hembras; sponge, las que llevan huevos</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>holds a character no file can keep</source>
   <translation>contiene un carácter que ningún archivo puede guardar</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>remove it</source>
   <translation>quítelo</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>is no known word</source>
   <translation>no es una palabra conocida</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>use one of {words}</source>
   <translation>use una de {words}</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>is not a possible count</source>
   <translation>no es un número posible</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>give 0 to {max_count}</source>
   <translation>indique de 0 a {max_count}</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>is more than were picked ({picked})</source>
   <translation>es más de los que se abrieron ({picked})</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>name the trip and its place</source>
   <translation>ponga nombre a la salida y a su lugar</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>is not a likely year</source>
   <translation>no es un año verosímil</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>is in the future</source>
   <translation>está en el futuro</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>correct the date</source>
   <translation>corrija la fecha</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>is more than were judged ({judged})</source>
   <translation>es más de los que se examinaron ({judged})</translation>
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>light counts those of the judged that were light</source>
   <translation>light cuenta, de los examinados, los que estaban vacíos</translation>
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>save it as CSV in UTF-8</source>
   <translation>guárdelo como CSV en UTF-8</translation>
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>begin it with the header trip,place,spot,trap,...</source>
   <translation>empiécelo con el encabezado trip,place,spot,trap,...</translation>
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>line {line}</source>
   <translation>línea {line}</translation>
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>has {cells} cells where the header has {columns} columns</source>
   <translation>tiene {cells} celdas donde el encabezado tiene {columns} columnas</translation>
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>put texts that hold {shown} in quotation marks, and one cell for each column</source>
   <translation>ponga entre comillas los textos que contengan {shown}, y una celda por cada columna</translation>
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>a column without a name holds values</source>
   <translation>una columna sin nombre contiene valores</translation>
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>the header has no column "{name}"{hint}</source>
   <translation>el encabezado no tiene la columna "{name}"{hint}</translation>
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>name the columns as in trip,place,spot,trap,design,bait,...</source>
   <translation>nombre las columnas como en trip,place,spot,trap,design,bait,...</translation>
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>is UTF-16 text</source>
   <translation>es texto UTF-16</translation>
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>holds a zero byte; this is no text</source>
   <translation>contiene un byte nulo; esto no es texto</translation>
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>check the quotation marks from this line on; double those inside a text</source>
   <translation>revise las comillas desde esta línea en adelante; duplique las que estén dentro de un texto</translation>
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>; is "{near}" meant?</source>
   <translation>; ¿será "{near}"?</translation>
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>line 1, {name}</source>
   <translation>línea 1, {name}</translation>
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>the column is there twice</source>
   <translation>la columna aparece dos veces</translation>
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>remove or rename one</source>
   <translation>quite una o cámbiele el nombre</translation>
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>line 1</source>
   <translation>línea 1</translation>
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>give the column a name in the header</source>
   <translation>dé un nombre a la columna en el encabezado</translation>
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>is not UTF-8 text</source>
   <translation>no es texto UTF-8</translation>
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>is not CSV: {error}</source>
   <translation>no es CSV: {error}</translation>
  </message>
  <message>
   <location filename="planner/logbook/workbook.py" />
   <source>Hauls</source>
   <translation>Recog.</translation>
  </message>
  <message>
   <location filename="planner/logbook/workbook.py" />
   <source>{path}: a sheet ends at {most_rows} rows; export the log as CSV.</source>
   <translation>{path}: una hoja termina a las {most_rows} filas; exporte el registro como CSV.</translation>
  </message>
  <message>
   <location filename="planner/logbook/workbook.py" />
   <source>{path}: a text is longer than a cell can hold ("{given}..."); export the log as CSV.</source>
   <translation>{path}: un texto es más largo de lo que cabe en una celda ("{given}..."); exporte el registro como CSV.</translation>
  </message>
  <message>
   <location filename="planner/logbook/writing.py" />
   <source>trap {trap}</source>
   <translation>nasa {trap}</translation>
  </message>
  <message>
   <location filename="planner/logbook/writing.py" />
   <source>a trap</source>
   <translation>una nasa</translation>
  </message>
  <message>
   <location filename="planner/logbook/writing.py" />
   <source>{label} of trip {name}</source>
   <translation>{label} de la salida {name}</translation>
  </message>
  <message>
   <location filename="planner/molt/filling.py" />
   <source>Your last judged trip, {when}, was {one_in} light. {told}</source>
   <translation>En su última salida con cangrejos examinados, {when}, los vacíos fueron {one_in}. {told}</translation>
  </message>
  <message>
   <location filename="planner/molt/filling.py" />
   <source>{value}light crabs fill in about {mean} days ({low} to {high}): from {day} it matters little.</source>
   <translation>{value}los cangrejos vacíos se llenan en unos {mean} días (de {low} a {high}): a partir del {day} importa poco.</translation>
  </message>
  <message>
   <location filename="planner/molt/filling.py" />
   <source>In water as cold as here light crabs take half a year or more to fill.</source>
   <translation>En un agua tan fría como la de aquí, los cangrejos vacíos tardan medio año o más en llenarse.</translation>
  </message>
  <message>
   <location filename="planner/molt/filling.py" />
   <source>At {temperature} </source>
   <translation>A {temperature} </translation>
  </message>
  <message>
   <location filename="planner/molt/filling.py" />
   <source>In this water </source>
   <translation>En esta agua </translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>Astronomical tide only: wind, rain and air pressure move real water. Not for navigation.</source>
   <translation>Solo marea astronómica: el viento, la lluvia y la presión del aire mueven el agua real. No usar para la navegación.</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>Rules differ by place and change: check them with the agency before every trip.</source>
   <translation>Las normas varían según el lugar y cambian: confírmelas con la autoridad pesquera antes de cada salida.</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{value:{form}}</source>
   <translation>{value:{form}}</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{low}–{high}</source>
   <translation>{low}-{high}</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{mean} ({range})</source>
   <translation>{mean} ({range})</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>about {share}</source>
   <translation>aprox. {share}</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>about {count}</source>
   <translation>cerca de {count}</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{height_m:.2f} m</source>
   <translation>{height_m:.2f} m</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{day:%a} {day.day} {day:%b}</source>
   <translation>{day:%a} {day.day} {day:%b}</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{day.day} {day:%b %Y}</source>
   <translation>{day.day} {day:%b %Y}</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>Mondays</source>
   <translation>los lunes</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>Tuesdays</source>
   <translation>los martes</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>Wednesdays</source>
   <translation>los miércoles</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>Thursdays</source>
   <translation>los jueves</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>Fridays</source>
   <translation>los viernes</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>Saturdays</source>
   <translation>los sábados</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>Sundays</source>
   <translation>los domingos</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>new moon</source>
   <translation>luna nueva</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>first quarter</source>
   <translation>cuarto creciente</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>full moon</source>
   <translation>luna llena</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>last quarter</source>
   <translation>cuarto menguante</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{degrees} colder</source>
   <translation>{degrees} más fría</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{low} to {high}</source>
   <translation>{low} a {high}</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>fewer than 1 in 50</source>
   <translation>menos de 1 de 50</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>nearly all</source>
   <translation>casi todos</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>1 in {count}</source>
   <translation>1 de {count}</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>half</source>
   <translation>la mitad</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{tenths} in 10</source>
   <translation>{tenths} de 10</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{height_ft:.1f} ft</source>
   <translation>{height_ft:.1f} ft</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{whole} h</source>
   <translation>{whole} h</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{whole} h ({soak_h:.1f} days)</source>
   <translation>{whole} h ({soak_h:.1f} días)</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>A day or more</source>
   <translation>Un día o más</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>Minutes</source>
   <translation>Minutos</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>today</source>
   <translation>hoy</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>yesterday</source>
   <translation>ayer</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{days} days ago</source>
   <translation>hace {days} días</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{day:%a}</source>
   <translation>{day:%a}</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{month:%b}</source>
   <translation>{month:%b}</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>as warm</source>
   <translation>igual de cálida</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{degrees} warmer</source>
   <translation>{degrees} más cálida</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>am</source>
   <translation>a. m.</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>pm</source>
   <translation>p. m.</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{rest} min</source>
   <translation>{rest} min</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>tomorrow</source>
   <translation>mañana</translation>
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>in {days} days</source>
   <translation>dentro de {days} días</translation>
  </message>
  <message>
   <location filename="planner/sites/book.py" />
   <source>did you mean {near}? </source>
   <translation>¿quiso decir {near}? </translation>
  </message>
  <message>
   <location filename="planner/sites/book.py" />
   <source>there is no such file and no such place in the book</source>
   <translation>no existe ese archivo ni ese lugar en el libro</translation>
  </message>
  <message>
   <location filename="planner/sites/book.py" />
   <source>{hint}give a place file (.toml) or one of: </source>
   <translation>{hint}indique un archivo de lugar (.toml) o uno de estos: </translation>
  </message>
  <message>
   <location filename="planner/sites/book.py" />
   <source> or </source>
   <translation> o </translation>
  </message>
  <message>
   <location filename="planner/sites/build.py" />
   <source>name a place that has [water.constituents]</source>
   <translation>indique un lugar que tenga [water.constituents]</translation>
  </message>
  <message>
   <location filename="planner/sites/build.py" />
   <source>that place is itself an offset from another</source>
   <translation>ese lugar ya se define por diferencias con otro</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>did you mean {near}?</source>
   <translation>¿quiso decir {near}?</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>give one of {known}</source>
   <translation>indique uno de {known}</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>the lowest level</source>
   <translation>el nivel más bajo</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>the margin</source>
   <translation>el margen</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>there is no profile of that name</source>
   <translation>no hay ningún perfil con ese nombre</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>is {apart:.0f} hours from the clock of {key}</source>
   <translation>está a {apart:.0f} horas del reloj de {key}</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>correct one of them; west longitudes are negative</source>
   <translation>corrija uno de los dos; las longitudes oeste son negativas</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>does not say when</source>
   <translation>no dice cuándo</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>give after_high_minutes, after_low_minutes or both, or take the table out</source>
   <translation>indique after_high_minutes, after_low_minutes o ambas, o quite la tabla</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>a depth</source>
   <translation>una profundidad</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>a trap's height</source>
   <translation>la altura de una nasa</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>{first:.0f} in January to March, {third:.0f} in July to September</source>
   <translation>{first:.0f} de enero a marzo, {third:.0f} de julio a septiembre</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>the water is warm in the winter of latitude {latitude:g}</source>
   <translation>el agua está caliente en el invierno de la latitud {latitude:g}</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>begin with January, or correct the latitude; south is negative</source>
   <translation>empiece por enero, o corrija la latitud; el sur es negativo</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>leaves no day free</source>
   <translation>no deja ningún día libre</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>give days such as ["Fri", "Sat", "Sun"], or dates in also</source>
   <translation>dé días como ["Fri", "Sat", "Sun"], o fechas en also</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>is not after from ({earliest:%H:%M})</source>
   <translation>no es posterior a from ({earliest:%H:%M})</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>give the hours of one day, such as 05:30 to 20:30</source>
   <translation>indique las horas de un solo día, por ejemplo de 05:30 a 20:30</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>the shortest soak is longer than the longest</source>
   <translation>el tiempo en el agua más corto es mayor que el más largo</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>exchange the two</source>
   <translation>intercambie los dos</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>the shortest soak is over the {allowed:g} hours that rules.max_soak_hours allows</source>
   <translation>el tiempo en el agua más corto supera las {allowed:g} horas que permite rules.max_soak_hours</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>shorten it, or check the rule</source>
   <translation>acórtelo, o revise la norma</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>is more than the {most:g} that rules.max_traps allows</source>
   <translation>es más que las {most:g} que permite rules.max_traps</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>set fewer traps, or check the rule</source>
   <translation>cale menos nasas, o revise la norma</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>is missing beside {given}</source>
   <translation>falta junto a {given}</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>give both in degrees, or neither</source>
   <translation>indique las dos en grados, o ninguna</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>latitude {latitude:g}, longitude {longitude:g}</source>
   <translation>latitud {latitude:g}, longitud {longitude:g}</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>lies {km:.0f} km from the place</source>
   <translation>queda a {km:.0f} km del lugar</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>correct the position; west longitudes and south latitudes are negative</source>
   <translation>corrija la posición; las longitudes oeste y las latitudes sur son negativas</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>give both ends of the period</source>
   <translation>indique los dos extremos del periodo</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>is also the name of spot {first}</source>
   <translation>es también el nombre del puesto {first}</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>rename one</source>
   <translation>cambie el nombre de uno</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>give from and to, or weekdays, or all of them</source>
   <translation>indique from y to, o weekdays, o todo ello</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>{first} to {last}</source>
   <translation>{first} a {last}</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>mixes a date with a day of every year</source>
   <translation>mezcla una fecha con un día de todos los años</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>write both like 2026-02-11, or both like "02-11"</source>
   <translation>escriba ambos como 2026-02-11, o ambos como "02-11"</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>ends before it begins</source>
   <translation>termina antes de empezar</translation>
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>exchange from and to</source>
   <translation>intercambie from y to</translation>
  </message>
  <message>
   <location filename="planner/sites/editing.py" />
   <source>time zone</source>
   <translation>huso horario</translation>
  </message>
  <message>
   <location filename="planner/sites/editing.py" />
   <source>clock of the lags</source>
   <translation>reloj de los desfases</translation>
  </message>
  <message>
   <location filename="planner/sites/editing.py" />
   <source>node factors</source>
   <translation>factores nodales</translation>
  </message>
  <message>
   <location filename="planner/sites/editing.py" />
   <source>state of the constants</source>
   <translation>estado de las constantes</translation>
  </message>
  <message>
   <location filename="planner/sites/editing.py" />
   <source>slack water</source>
   <translation>estoa</translation>
  </message>
  <message>
   <location filename="planner/sites/editing.py" />
   <source>closed periods</source>
   <translation>vedas</translation>
  </message>
  <message>
   <location filename="planner/sites/editing.py" />
   <source>free days</source>
   <translation>días libres</translation>
  </message>
  <message>
   <location filename="planner/sites/editing.py" />
   <source>is laid out in a way that cannot be changed here without harm</source>
   <translation>está dispuesto de una manera que aquí no se puede cambiar sin daño</translation>
  </message>
  <message>
   <location filename="planner/sites/editing.py" />
   <source>change it in a text editor; docs/place-file.md shows the usual layout</source>
   <translation>cámbielo en un editor de texto; docs/place-file.md muestra la disposición habitual</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the lowest water level at which the boat launches, such as -0.1</source>
   <translation>el nivel de agua más bajo con el que se puede botar la embarcación, por ejemplo -0.1</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>minutes from high water to slack, -360 to 360, such as 40; negative is before</source>
   <translation>los minutos de la pleamar a la estoa, de -360 a 360, como 40; negativo es antes</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>minutes from low water to slack, -360 to 360, such as 25; negative is before</source>
   <translation>los minutos de la bajamar a la estoa, de -360 a 360, como 25; negativo es antes</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the name of the spot, such as "grass edge"</source>
   <translation>el nombre del puesto, por ejemplo "borde de la hierba"</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the charted depth below the datum, such as 1.8</source>
   <translation>la sonda bajo el cero de referencia, por ejemplo 1.8</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the height of the trap, such as 0.35 m</source>
   <translation>la altura de la nasa, por ejemplo 0.35 m</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the position in degrees, north positive, such as 38.2034</source>
   <translation>la posición en grados, positiva al norte, por ejemplo 38.2034</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the position in degrees, east positive, such as -76.1012</source>
   <translation>la posición en grados, positiva al este, por ejemplo -76.1012</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>twelve water temperatures, January to December, in degrees Celsius (-2 to 40)</source>
   <translation>doce temperaturas del agua, de enero a diciembre, en grados Celsius (de -2 a 40)</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>why it is closed, such as "trap clean-up"</source>
   <translation>por qué está cerrado, por ejemplo "limpieza de nasas"</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>a date such as 2026-02-11, or "02-11" for every year</source>
   <translation>una fecha, por ejemplo 2026-02-11, o "02-11" para todos los años</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>a date such as 2026-02-20, or "02-20" for every year</source>
   <translation>una fecha, por ejemplo 2026-02-20, o "02-20" para todos los años</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>days of the week, such as ["Sun"]</source>
   <translation>días de la semana, por ejemplo ["Sun"]</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the heading it stands under, such as "minimum size"</source>
   <translation>el encabezado bajo el que va, por ejemplo "talla mínima"</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the rule in your own words, in quotes</source>
   <translation>la norma con sus propias palabras, entre comillas</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the date you last checked the rules, such as 2026-03-02</source>
   <translation>la fecha en que comprobó las normas por última vez, por ejemplo 2026-03-02</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>where you checked them, in quotes</source>
   <translation>dónde las comprobó, entre comillas</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the most traps allowed, a whole number</source>
   <translation>el máximo de nasas permitido, un número entero</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the longest soak allowed in hours, such as 72</source>
   <translation>el tiempo en el agua más largo permitido, en horas, por ejemplo 72</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>tables headed [[rules.notes]]</source>
   <translation>tablas con el encabezado [[rules.notes]]</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the days you are free, such as ["Fri", "Sat", "Sun"]</source>
   <translation>los días que tiene libres, por ejemplo ["Fri", "Sat", "Sun"]</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>a time of day such as "05:30"</source>
   <translation>una hora del día, por ejemplo "05:30"</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>a time of day such as "20:30"</source>
   <translation>una hora del día, por ejemplo "20:30"</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>dates such as [2026-05-25]</source>
   <translation>fechas, por ejemplo [2026-05-25]</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>dates such as [2026-07-04]</source>
   <translation>fechas, por ejemplo [2026-07-04]</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>how many traps you set, a whole number</source>
   <translation>cuántas nasas cala, un número entero</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the shortest and the longest soak, such as [14, 50]</source>
   <translation>el tiempo en el agua más corto y el más largo, por ejemplo [14, 50]</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>minutes from fetching bait to the first set, 0 to 600</source>
   <translation>minutos desde que recoge el cebo hasta la primera calada, de 0 a 600</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>minutes it takes to set all traps, up to 1440</source>
   <translation>minutos que lleva calar todas las nasas, hasta 1440</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>minutes it takes to haul all traps, up to 1440</source>
   <translation>minutos que lleva recoger todas las nasas, hasta 1440</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>least water to keep over every trap, such as 0.3 m</source>
   <translation>el agua mínima que debe quedar sobre cada nasa, por ejemplo 0.3 m</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>format = 1; a later number needs a later Fullshell</source>
   <translation>format = 1; un número posterior necesita un Fullshell posterior</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the name of the place, such as "Otter Bight"</source>
   <translation>el nombre del lugar, por ejemplo "Otter Bight"</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>degrees from -90 to 90, north positive, such as 38.2</source>
   <translation>grados de -90 a 90, positivos al norte, por ejemplo 38.2</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>degrees from -180 to 180, east positive, such as -76.1</source>
   <translation>grados de -180 a 180, positivos al este, por ejemplo -76.1</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the name of the time zone, such as "America/New_York"</source>
   <translation>el nombre del huso horario, por ejemplo "America/New_York"</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>a species profile, such as "blue-crab"</source>
   <translation>un perfil de especie, por ejemplo "blue-crab"</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>true or false</source>
   <translation>true o false</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>a table headed [water]</source>
   <translation>una tabla con el encabezado [water]</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>a table headed [ramp]</source>
   <translation>una tabla con el encabezado [ramp]</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>a table headed [slack]</source>
   <translation>una tabla encabezada [slack]</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>tables headed [[spots]]</source>
   <translation>tablas con el encabezado [[spots]]</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>a table headed [temperature]</source>
   <translation>una tabla con el encabezado [temperature]</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>tables headed [[closures]]</source>
   <translation>tablas con el encabezado [[closures]]</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>a table headed [rules]</source>
   <translation>una tabla con el encabezado [rules]</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>a table headed [free]</source>
   <translation>una tabla con el encabezado [free]</translation>
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>a table headed [trip]</source>
   <translation>una tabla con el encabezado [trip]</translation>
  </message>
  <message>
   <location filename="planner/sites/file_values.py" />
   <source>is not a day of the week</source>
   <translation>no es un día de la semana</translation>
  </message>
  <message>
   <location filename="planner/sites/file_values.py" />
   <source>give one of Mon, Tue, Wed, Thu, Fri, Sat, Sun</source>
   <translation>indique uno de Mon, Tue, Wed, Thu, Fri, Sat, Sun</translation>
  </message>
  <message>
   <location filename="planner/sites/file_values.py" />
   <source>must be a date</source>
   <translation>debe ser una fecha</translation>
  </message>
  <message>
   <location filename="planner/sites/file_values.py" />
   <source>is not a day of the year</source>
   <translation>no es un día del año</translation>
  </message>
  <message>
   <location filename="planner/sites/file_values.py" />
   <source>contains characters that cannot be shown</source>
   <translation>contiene caracteres que no se pueden mostrar</translation>
  </message>
  <message>
   <location filename="planner/sites/file_values.py" />
   <source>must be text in quotes</source>
   <translation>debe ser texto entre comillas</translation>
  </message>
  <message>
   <location filename="planner/sites/file_values.py" />
   <source>must be after the year {every_year}</source>
   <translation>debe ser posterior al año {every_year}</translation>
  </message>
  <message>
   <location filename="planner/sites/file_values.py" />
   <source>must be a time of day</source>
   <translation>debe ser una hora del día</translation>
  </message>
  <message>
   <location filename="planner/sites/file_values.py" />
   <source>is not a known time zone</source>
   <translation>no es un huso horario conocido</translation>
  </message>
  <message>
   <location filename="planner/sites/file_values.py" />
   <source>{hint}give its full name, such as "America/New_York"</source>
   <translation>{hint}indique su nombre completo, por ejemplo "America/New_York"</translation>
  </message>
  <message>
   <location filename="planner/sites/file_values.py" />
   <source>is not a clock with a fixed distance from UTC</source>
   <translation>no es un reloj con una diferencia fija respecto a UTC</translation>
  </message>
  <message>
   <location filename="planner/sites/keeping.py" />
   <source>give a name of 1 to {longest_name} ordinary characters</source>
   <translation>indique un nombre de 1 a {longest_name} caracteres corrientes</translation>
  </message>
  <message>
   <location filename="planner/sites/keeping.py" />
   <source>the nearest sample, {km:.0f} km away; or a file beside this one</source>
   <translation>el ejemplo más cercano, a {km:.0f} km; o un archivo junto a este</translation>
  </message>
  <message>
   <location filename="planner/sites/keeping.py" />
   <source>{hint}give its full name, such as America/New_York</source>
   <translation>{hint}indique su nombre completo, por ejemplo America/New_York</translation>
  </message>
  <message>
   <location filename="planner/sites/keeping.py" />
   <source>new place</source>
   <translation>lugar nuevo</translation>
  </message>
  <message>
   <location filename="planner/sites/keeping.py" />
   <source>must be from {least} to {most}</source>
   <translation>debe estar entre {least} y {most}</translation>
  </message>
  <message>
   <location filename="planner/sites/keeping.py" />
   <source>your places already hold a file of that name</source>
   <translation>ya hay un archivo con ese nombre entre sus lugares</translation>
  </message>
  <message>
   <location filename="planner/sites/keeping.py" />
   <source>open that one, or rename it first; nothing was written over</source>
   <translation>abra ese, o cámbiele antes el nombre; no se sobrescribió nada</translation>
  </message>
  <message>
   <location filename="planner/sites/keeping.py" />
   <source>is missing</source>
   <translation>falta</translation>
  </message>
  <message>
   <location filename="planner/sites/keeping.py" />
   <source>cannot be used as a name</source>
   <translation>no se puede usar como nombre</translation>
  </message>
  <message>
   <location filename="planner/sites/keeping.py" />
   <source>give degrees, north positive, such as 38.2</source>
   <translation>indique grados, positivos al norte, por ejemplo 38.2</translation>
  </message>
  <message>
   <location filename="planner/sites/keeping.py" />
   <source>give degrees, east positive, such as -76.1</source>
   <translation>indique grados, positivos al este, por ejemplo -76.1</translation>
  </message>
  <message>
   <location filename="planner/sites/raw.py" />
   <source>{what} cannot be {height_m:.2f} m</source>
   <translation>{what} no puede ser de {height_m:.2f} m</translation>
  </message>
  <message>
   <location filename="planner/sites/raw.py" />
   <source>give {low:g} to {high:g} m, or correct water.units</source>
   <translation>indique de {low:g} a {high:g} m, o corrija water.units</translation>
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>correct the line; text needs quotes, numbers a decimal point, tables are headed [like-this]</source>
   <translation>corrija la línea; el texto lleva comillas, los números punto decimal y las tablas se encabezan [así]</translation>
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>is not TOML: {what}</source>
   <translation>no es TOML: {what}</translation>
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>, column {position}</source>
   <translation>, columna {position}</translation>
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source> (the last)</source>
   <translation> (la última)</translation>
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>line {number}{column}</source>
   <translation>línea {number}{column}</translation>
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>gives something a second time</source>
   <translation>da algo por segunda vez</translation>
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>keep one of the two</source>
   <translation>quédese con uno de los dos</translation>
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>tables or lists are nested too deeply</source>
   <translation>las tablas o listas están anidadas a demasiada profundidad</translation>
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>write it as docs/place-file.md shows</source>
   <translation>escríbalo como muestra docs/place-file.md</translation>
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>name a place file in it</source>
   <translation>indique un archivo de lugar que esté en ella</translation>
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>is not an ordinary file</source>
   <translation>no es un archivo corriente</translation>
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>name a place file (.toml)</source>
   <translation>indique un archivo de lugar (.toml)</translation>
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>is larger than a place file can be ({max_file_bytes} kB)</source>
   <translation>es mayor de lo que puede ser un archivo de lugar ({max_file_bytes} kB)</translation>
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>the file is not UTF-8 text</source>
   <translation>el archivo no es texto UTF-8</translation>
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>save it as UTF-8 in a text editor</source>
   <translation>guárdelo como UTF-8 en un editor de texto</translation>
  </message>
  <message>
   <location filename="planner/sites/rule_book.py" />
   <source>licence or registration</source>
   <translation>licencia o registro</translation>
  </message>
  <message>
   <location filename="planner/sites/rule_book.py" />
   <source>area, closed water and season</source>
   <translation>zona, aguas vedadas y temporada</translation>
  </message>
  <message>
   <location filename="planner/sites/rule_book.py" />
   <source>closed days and night hauling</source>
   <translation>días vedados y recogida nocturna</translation>
  </message>
  <message>
   <location filename="planner/sites/rule_book.py" />
   <source>buoy size, colour, name or number</source>
   <translation>tamaño, color, nombre o número de la boya</translation>
  </message>
  <message>
   <location filename="planner/sites/rule_book.py" />
   <source>weighted line, none floating</source>
   <translation>cabo lastrado, ninguno a flote</translation>
  </message>
  <message>
   <location filename="planner/sites/rule_book.py" />
   <source>escape or cull rings</source>
   <translation>aros de escape o de selección</translation>
  </message>
  <message>
   <location filename="planner/sites/rule_book.py" />
   <source>degradable panel or cotton cord</source>
   <translation>panel degradable o cordel de algodón</translation>
  </message>
  <message>
   <location filename="planner/sites/rule_book.py" />
   <source>turtle excluder</source>
   <translation>excluidor de tortugas</translation>
  </message>
  <message>
   <location filename="planner/sites/rule_book.py" />
   <source>service interval</source>
   <translation>intervalo de revisión</translation>
  </message>
  <message>
   <location filename="planner/sites/rule_book.py" />
   <source>minimum size and how it is measured</source>
   <translation>talla mínima y cómo se mide</translation>
  </message>
  <message>
   <location filename="planner/sites/rule_book.py" />
   <source>sex and egg-bearing rules</source>
   <translation>normas sobre el sexo y las hembras con huevos</translation>
  </message>
  <message>
   <location filename="planner/sites/rule_book.py" />
   <source>soft-shell release</source>
   <translation>suelta de cangrejos blandos</translation>
  </message>
  <message>
   <location filename="planner/sites/rule_book.py" />
   <source>bag limit</source>
   <translation>cupo de captura</translation>
  </message>
  <message>
   <location filename="planner/sites/rule_book.py" />
   <source>catch record</source>
   <translation>registro de capturas</translation>
  </message>
  <message>
   <location filename="planner/sites/rule_book.py" />
   <source>gear out of channels</source>
   <translation>aparejos fuera de los canales</translation>
  </message>
  <message>
   <location filename="planner/sites/saving.py" />
   <source>has been changed by another program since it was read</source>
   <translation>lo ha cambiado otro programa desde que se leyó</translation>
  </message>
  <message>
   <location filename="planner/sites/saving.py" />
   <source>read it again first; your edit is kept as a draft</source>
   <translation>vuelva a leerlo primero; su cambio se conserva como borrador</translation>
  </message>
  <message>
   <location filename="planner/sites/saving.py" />
   <source>cannot be read: {value}</source>
   <translation>no se puede leer: {value}</translation>
  </message>
  <message>
   <location filename="planner/sites/saving.py" />
   <source>cannot be written: {value}</source>
   <translation>no se puede escribir: {value}</translation>
  </message>
  <message>
   <location filename="planner/sites/saving.py" />
   <source>check the folder's permissions and the room on the disk</source>
   <translation>compruebe los permisos de la carpeta y el espacio en el disco</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>give mean level and amplitudes in one unit, that of water.units</source>
   <translation>indique el nivel medio y las amplitudes en una misma unidad, la de water.units</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>the mean level</source>
   <translation>el nivel medio</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>give the minutes added to the times, such as {example}</source>
   <translation>indique los minutos que se suman a las horas, por ejemplo {example}</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>constituents and offsets</source>
   <translation>constituyentes y diferencias</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>the tide is given twice</source>
   <translation>la marea se indica dos veces</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>keep either [water.constituents] or [water.offsets]</source>
   <translation>conserve [water.constituents] o [water.offsets], no ambos</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>give the mean water level above the datum, such as 0.26</source>
   <translation>indique el nivel medio del agua sobre el cero de referencia, por ejemplo 0.26</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>there is no amplitude above zero</source>
   <translation>no hay ninguna amplitud mayor que cero</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>add the constituents of the place</source>
   <translation>añada los constituyentes del lugar</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>amplitudes adding up to {total_m:.1f} m</source>
   <translation>amplitudes que suman {total_m:.1f} m</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>no tide on Earth is that large</source>
   <translation>ninguna marea de la Tierra es tan grande</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>correct water.units (are these feet? then units = "ft") or the amplitudes</source>
   <translation>corrija water.units (¿son pies? entonces units = "ft") o las amplitudes</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>{level_m:.2f} m</source>
   <translation>{level_m:.2f} m</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>the lowest tide these amplitudes can make stays {level_m:.2f} m above zero, which a low-water datum does not allow</source>
   <translation>la marea más baja que pueden dar estas amplitudes queda {level_m:.2f} m sobre cero, y un cero de referencia de bajamar no lo permite</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>a difference</source>
   <translation>una diferencia</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>differs from high_minutes by {hours:.0f} h, which leaves no tide</source>
   <translation>difiere de high_minutes en {hours:.0f} h, lo que no deja marea</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>check the signs: later is positive, earlier negative</source>
   <translation>compruebe los signos: más tarde es positivo y más temprano negativo</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>is given beside tabled differences, which take its place</source>
   <translation>se indica junto a diferencias tabuladas, que lo sustituyen</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>nothing says what the tide is made of</source>
   <translation>nada dice de qué se compone la marea</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>add [water.constituents], or [water.offsets] from another place</source>
   <translation>añada [water.constituents], o [water.offsets] de otro lugar</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>is the same constituent as {written_as}</source>
   <translation>es el mismo constituyente que {written_as}</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>keep one of the two lines</source>
   <translation>deje solo una de las dos líneas</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>is too low for a low-water datum and an M2 amplitude of {m2_m:.2f} m</source>
   <translation>es demasiado bajo para un cero de bajamar y una amplitud de M2 de {m2_m:.2f} m</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>both columns hold at the same times, twelve hours apart</source>
   <translation>las dos columnas valen para las mismas horas, con doce de diferencia</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>give two times of day such as 00:00 and 06:00</source>
   <translation>indique dos horas del día, como 00:00 y 06:00</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>both columns are for the same height</source>
   <translation>las dos columnas son para la misma altura</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>give the heights of mean springs and of mean neaps at the reference place</source>
   <translation>indique las alturas de las mareas vivas medias y de las mareas muertas medias en el lugar de referencia</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>is not a constituent this program knows</source>
   <translation>no es un constituyente que este programa conozca</translation>
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>{hint}correct the name or take the line out</source>
   <translation>{hint}corrija el nombre o quite la línea</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>the amplitude in the units of the file, 0 or more</source>
   <translation>la amplitud en las unidades del archivo, 0 o más</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>the phase lag in degrees, 0 to 360</source>
   <translation>el desfase en grados, de 0 a 360</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>a time on the clock of the table, such as "06:00"</source>
   <translation>una hora en el reloj de la tabla, como "06:00"</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>minutes added to the time, such as 23</source>
   <translation>los minutos que se suman a la hora, como 23</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>the height at the reference place, such as 4.2</source>
   <translation>la altura en el lugar de referencia, como 4.2</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>what is added to it, such as 0.3</source>
   <translation>lo que se le suma, como 0.3</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>the clock of the table, "UTC" or such as "UTC+01:00", never summer time</source>
   <translation>el reloj de la tabla, "UTC" o como "UTC+01:00", nunca horario de verano</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>two columns such as { at = "00:00", minutes = 35 }</source>
   <translation>dos columnas como { at = "00:00", minutes = 35 }</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>two columns such as { at = "06:00", minutes = 23 }</source>
   <translation>dos columnas como { at = "06:00", minutes = 23 }</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>two columns such as { there = 4.2, add = 1.1 }</source>
   <translation>dos columnas como { there = 4.2, add = 1.1 }</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>two columns such as { there = 0.4, add = 0.1 }</source>
   <translation>dos columnas como { there = 0.4, add = 0.1 }</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>the place file (or place name) of the reference, such as "other-place.toml"</source>
   <translation>el archivo de lugar (o el nombre del lugar) de referencia, como "other-place.toml"</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>minutes added to the times of high water, such as 47</source>
   <translation>los minutos que se suman a las horas de pleamar, como 47</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>minutes added to the times of low water, such as 62</source>
   <translation>los minutos que se suman a las horas de bajamar, como 62</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>the ratio of the heights of high water, such as 0.86</source>
   <translation>la razón entre las alturas de pleamar, como 0.86</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>the ratio of the heights of low water, such as 0.90</source>
   <translation>la razón entre las alturas de bajamar, como 0.90</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>what is added to the heights of high water, such as -0.12</source>
   <translation>lo que se suma a las alturas de pleamar, como -0.12</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>what is added to the heights of low water, such as -0.05</source>
   <translation>lo que se suma a las alturas de bajamar, como -0.05</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>a table with clock, high_times, low_times and the heights</source>
   <translation>una tabla con clock, high_times, low_times y las alturas</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>the unit of every height in this file, "m" or "ft"</source>
   <translation>la unidad de todas las alturas de este archivo, "m" o "ft"</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>what zero means, such as "MLLW"</source>
   <translation>qué significa el cero, como "MLLW"</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>the mean water level above the datum, such as 0.26</source>
   <translation>el nivel medio del agua sobre el cero de referencia, como 0.26</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>the clock the phase lags were worked out in, "UTC" or such as "UTC-05:00"</source>
   <translation>el reloj con que se calcularon los desfases, "UTC" o como "UTC-05:00"</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>"yearly" (as agency tables do) or "continuous"</source>
   <translation>"yearly" (como en las tablas oficiales) o "continuous"</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>when the constants were issued, such as "2022"</source>
   <translation>cuándo se publicaron las constantes, como "2022"</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>where the constants are from, in quotes</source>
   <translation>de dónde vienen las constantes, entre comillas</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>lines such as M2 = { amplitude = 0.21, phase = 61.0 }</source>
   <translation>líneas como M2 = { amplitude = 0.21, phase = 61.0 }</translation>
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>a table with reference, high_minutes and low_minutes</source>
   <translation>una tabla con reference, high_minutes y low_minutes</translation>
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must be a table</source>
   <translation>debe ser una tabla</translation>
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must be a list</source>
   <translation>debe ser una lista</translation>
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must be a number</source>
   <translation>debe ser un número</translation>
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must be a whole number</source>
   <translation>debe ser un número entero</translation>
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must be true or false</source>
   <translation>debe ser true o false</translation>
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must be an ordinary number, not nan or inf</source>
   <translation>debe ser un número corriente, no nan ni inf</translation>
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must be more than {gt:g}</source>
   <translation>debe ser mayor que {gt:g}</translation>
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must be {ge:g} or more</source>
   <translation>debe ser {ge:g} o más</translation>
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must be less than {lt:g}</source>
   <translation>debe ser menor que {lt:g}</translation>
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must be {le:g} or less</source>
   <translation>debe ser {le:g} o menos</translation>
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must be {expected}</source>
   <translation>debe ser {expected}</translation>
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must be at most {max_length} characters long</source>
   <translation>debe tener como máximo {max_length} caracteres</translation>
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must have at least {min_length} entries</source>
   <translation>debe tener al menos {min_length} elementos</translation>
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must have at most {max_length} entries</source>
   <translation>debe tener como máximo {max_length} elementos</translation>
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>take it out; the keys here are {known}</source>
   <translation>quítelo; las claves de esta tabla son {known}</translation>
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>a value as docs/place-file.md shows</source>
   <translation>un valor como muestra docs/place-file.md</translation>
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>give {description}</source>
   <translation>indique {description}</translation>
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>a table</source>
   <translation>una tabla</translation>
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>a list of {count}</source>
   <translation>una lista de {count}</translation>
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>a very long number</source>
   <translation>un número larguísimo</translation>
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>did you mean {near}? otherwise take it out</source>
   <translation>¿quiso decir {near}? si no, quítelo</translation>
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>is not a key of this table</source>
   <translation>no es una clave de esta tabla</translation>
  </message>
  <message>
   <location filename="planner/sky/ephemeris.py" />
   <source>The sun and moon cannot be computed for {wrong}; choose dates from {first} to {last}.</source>
   <translation>No se pueden calcular el sol y la luna para {wrong}; elija fechas entre {first} y {last}.</translation>
  </message>
  <message>
   <location filename="planner/sky/sun_words.py" />
   <source>sun up all day</source>
   <translation>el sol no se pone</translation>
  </message>
  <message>
   <location filename="planner/sky/sun_words.py" />
   <source>sun down all day</source>
   <translation>el sol no sale</translation>
  </message>
  <message>
   <location filename="planner/sky/sun_words.py" />
   <source>sun to {sets} and from {rise}</source>
   <translation>sol hasta las {sets} y desde las {rise}</translation>
  </message>
  <message>
   <location filename="planner/sky/sun_words.py" />
   <source>sun {rise} to {sets}</source>
   <translation>sol de {rise} a {sets}</translation>
  </message>
  <message>
   <location filename="planner/sky/sun_words.py" />
   <source>sun from {rise}</source>
   <translation>sol desde las {rise}</translation>
  </message>
  <message>
   <location filename="planner/sky/sun_words.py" />
   <source>sun to {sets}</source>
   <translation>sol hasta las {sets}</translation>
  </message>
  <message>
   <location filename="planner/tides/events.py" />
   <source>{turns}: your own estimate, which changes with range and weather; currents are not predicted</source>
   <translation>{turns}: una estimación suya, que cambia con la carrera y con el tiempo; las corrientes no se predicen</translation>
  </message>
  <message>
   <location filename="planner/tides/events.py" />
   <source>ramp begins to work</source>
   <translation>la rampa empieza a servir</translation>
  </message>
  <message>
   <location filename="planner/tides/events.py" />
   <source>ramp stops working</source>
   <translation>la rampa deja de servir</translation>
  </message>
  <message>
   <location filename="planner/tides/events.py" />
   <source>slack (estimated) before high water</source>
   <translation>estoa (estimada) antes de la pleamar</translation>
  </message>
  <message>
   <location filename="planner/tides/events.py" />
   <source>slack (estimated) before low water</source>
   <translation>estoa (estimada) antes de la bajamar</translation>
  </message>
  <message>
   <location filename="planner/tides/events.py" />
   <source>slack (estimated) at high water</source>
   <translation>estoa (estimada) en la pleamar</translation>
  </message>
  <message>
   <location filename="planner/tides/events.py" />
   <source>slack (estimated) at low water</source>
   <translation>estoa (estimada) en la bajamar</translation>
  </message>
  <message>
   <location filename="planner/tides/events.py" />
   <source>slack (estimated) after high water</source>
   <translation>estoa (estimada) tras la pleamar</translation>
  </message>
  <message>
   <location filename="planner/tides/events.py" />
   <source>slack (estimated) after low water</source>
   <translation>estoa (estimada) tras la bajamar</translation>
  </message>
  <message>
   <location filename="planner/tides/events.py" />
   <source>high water</source>
   <translation>pleamar</translation>
  </message>
  <message>
   <location filename="planner/tides/events.py" />
   <source>low water</source>
   <translation>bajamar</translation>
  </message>
  <message>
   <location filename="planner/tides/events.py" />
   <source>at {turn}</source>
   <translation>hacia la {turn}</translation>
  </message>
  <message>
   <location filename="planner/tides/events.py" />
   <source>about {minutes} min after {turn}</source>
   <translation>unos {minutes} min después de la {turn}</translation>
  </message>
  <message>
   <location filename="planner/tides/events.py" />
   <source>about {minutes} min before {turn}</source>
   <translation>unos {minutes} min antes de la {turn}</translation>
  </message>
  <message>
   <location filename="planner/tides/fit.py" />
   <source>The record holds {size} levels over {days:.1f} days; a fit needs at least {shortest_days:.0f} days of hourly levels.</source>
   <translation>El registro tiene {size} niveles en {days:.1f} días; un ajuste necesita al menos {shortest_days:.0f} días de niveles horarios.</translation>
  </message>
  <message>
   <location filename="planner/tides/fit.py" />
   <source>The record spans {days:.0f} days; a fit takes at most {longest_days:.0f}. Choose a year of it, the latest without large gaps.</source>
   <translation>El registro abarca {days:.0f} días; un ajuste admite como máximo {longest_days:.0f}. Elija de él un año, el último sin grandes huecos.</translation>
  </message>
  <message>
   <location filename="planner/tides/fit_words.py" />
   <source>{levels_used} hourly levels over {record_days:.0f} days: {strong} of {constituents} constituents that such a record tells apart stand out. Intervals hold the truth four times in five.</source>
   <translation>{levels_used} niveles horarios en {record_days:.0f} días: destacan {strong} de los {constituents} constituyentes que un registro así distingue. Los intervalos contienen el valor verdadero cuatro de cada cinco veces.</translation>
  </message>
  <message>
   <location filename="planner/tides/fit_words.py" />
   <source>Mean level {mean:.{places}f} {unit} above the record's own zero. What the tide does not explain scatters by {scatter:.{places}f} {unit}: weather, mostly.</source>
   <translation>Nivel medio {mean:.{places}f} {unit} sobre el cero del propio registro. Lo que la marea no explica se dispersa {scatter:.{places}f} {unit}: sobre todo, el tiempo.</translation>
  </message>
  <message>
   <location filename="planner/tides/fit_words.py" />
   <source>Under half a year P1 hides in K1 and K2 in S2, and the season (SA, SSA) is unknown and moves the mean level: other months are predicted worse than the intervals say.</source>
   <translation>Con menos de medio año, P1 se esconde en K1 y K2 en S2, y la variación estacional (SA, SSA) es desconocida y desplaza el nivel medio: los demás meses se predicen peor de lo que dicen los intervalos.</translation>
  </message>
  <message>
   <location filename="planner/tides/fit_words.py" />
   <source>{mean:.{places}f} ± {half:.{places}f}</source>
   <translation>{mean:.{places}f} ± {half:.{places}f}</translation>
  </message>
  <message>
   <location filename="planner/tides/fit_words.py" />
   <source>Under a year the season (SA, SSA) is not well known.</source>
   <translation>Con menos de un año, la variación estacional (SA, SSA) no se conoce bien.</translation>
  </message>
  <message>
   <location filename="planner/tides/fit_words.py" />
   <source>{mean:.1f} ± {degrees:.1f}</source>
   <translation>{mean:.1f} ± {degrees:.1f}</translation>
  </message>
  <message>
   <location filename="planner/tides/fit_words.py" />
   <source>any</source>
   <translation>cualquiera</translation>
  </message>
  <message>
   <location filename="planner/tides/fit_words.py" />
   <source>taken</source>
   <translation>se usa</translation>
  </message>
  <message>
   <location filename="planner/tides/fit_words.py" />
   <source>too weak to tell from none</source>
   <translation>demasiado débil para distinguirlo de nada</translation>
  </message>
  <message>
   <location filename="planner/tides/offset.py" />
   <source>The offsets from the reference place leave no high and low waters: low water would come after the next high water, or stand above it; correct the minutes, factors and additions.</source>
   <translation>Las diferencias respecto al lugar de referencia no dejan pleamares ni bajamares: la bajamar llegaría después de la pleamar siguiente o quedaría por encima de ella; corrija los minutos, los factores y las sumas.</translation>
  </message>
  <message>
   <location filename="planner/tides/offset.py" />
   <source>The reference place has no high and low waters to take offsets from; choose a reference place with a tide.</source>
   <translation>El lugar de referencia no tiene pleamares ni bajamares de las que tomar diferencias; elija un lugar de referencia con marea.</translation>
  </message>
  <message>
   <location filename="planner/tides/offset_fit.py" />
   <source>From {count} turns the times are {known} (to about {value} min) and single heights differ from the fit by about {scatter_m} cm.</source>
   <translation>Con {count} pleamares y bajamares, las horas quedan {known} (con unos {value} min de margen) y las alturas sueltas se apartan del ajuste unos {scatter_m} cm.</translation>
  </message>
  <message>
   <location filename="planner/tides/offset_fit.py" />
   <source>{waters} the reference place's; note at least {fewest} of each kind, with their heights.</source>
   <translation>{waters} las del lugar de referencia; anote al menos {fewest} de cada tipo, con sus alturas.</translation>
  </message>
  <message>
   <location filename="planner/tides/offset_fit.py" />
   <source>well known</source>
   <translation>bien conocidas</translation>
  </message>
  <message>
   <location filename="planner/tides/offset_fit.py" />
   <source>{given} More observed turns, on calm days, would help.</source>
   <translation>{given} Ayudaría observar más pleamares y bajamares, en días tranquilos.</translation>
  </message>
  <message>
   <location filename="planner/tides/offset_fit.py" />
   <source>observed high water fits</source>
   <translation>pleamar observada encaja con</translation>
  </message>
  <message>
   <location filename="planner/tides/offset_fit.py" />
   <source>observed high waters fit</source>
   <translation>pleamares observadas encajan con</translation>
  </message>
  <message>
   <location filename="planner/tides/offset_fit.py" />
   <source>observed low water fits</source>
   <translation>bajamar observada encaja con</translation>
  </message>
  <message>
   <location filename="planner/tides/offset_fit.py" />
   <source>observed low waters fit</source>
   <translation>bajamares observadas encajan con</translation>
  </message>
  <message>
   <location filename="planner/tides/offset_fit.py" />
   <source>roughly known</source>
   <translation>conocidas a grandes rasgos</translation>
  </message>
  <message>
   <location filename="planner/tides/offset_fit.py" />
   <source>hardly known</source>
   <translation>apenas conocidas</translation>
  </message>
  <message>
   <location filename="planner/tides/reading.py" />
   <source>has no column {listed}</source>
   <translation>no tiene la columna {listed}</translation>
  </message>
  <message>
   <location filename="planner/tides/reading.py" />
   <source>begin the file with the line {columns}</source>
   <translation>empiece el archivo con la línea {columns}</translation>
  </message>
  <message>
   <location filename="planner/tides/reading.py" />
   <source>give a number in {unit}, or nothing when only the time was seen</source>
   <translation>indique un número en {unit}, o nada si solo se vio la hora</translation>
  </message>
  <message>
   <location filename="planner/tides/reading.py" />
   <source>write "high" or "low"</source>
   <translation>escriba "high" o "low"</translation>
  </message>
  <message>
   <location filename="planner/tides/reading.py" />
   <source>line {line_num}</source>
   <translation>línea {line_num}</translation>
  </message>
  <message>
   <location filename="planner/tides/reading.py" />
   <source>write it like 2026-07-04T06:12 (local) or 2026-07-04T10:12Z</source>
   <translation>escríbala como 2026-07-04T06:12 (hora local) o 2026-07-04T10:12Z</translation>
  </message>
  <message>
   <location filename="planner/tides/reading.py" />
   <source>look for a quote left open</source>
   <translation>busque unas comillas sin cerrar</translation>
  </message>
  <message>
   <location filename="planner/tides/reading.py" />
   <source>it is not text in UTF-8</source>
   <translation>no es texto en UTF-8</translation>
  </message>
  <message>
   <location filename="planner/tides/reading.py" />
   <source>cannot be read: {known}</source>
   <translation>no se puede leer: {known}</translation>
  </message>
  <message>
   <location filename="planner/tides/reading.py" />
   <source>give a CSV file in UTF-8</source>
   <translation>indique un archivo CSV en UTF-8</translation>
  </message>
  <message>
   <location filename="planner/tides/reading.py" />
   <source>is not a height</source>
   <translation>no es una altura</translation>
  </message>
  <message>
   <location filename="planner/tides/reading.py" />
   <source>is neither</source>
   <translation>no es ni lo uno ni lo otro</translation>
  </message>
  <message>
   <location filename="planner/tides/summary.py" />
   <source>no daily tide: M2, S2, K1 and O1 are all missing</source>
   <translation>sin marea diaria: faltan M2, S2, K1 y O1</translation>
  </message>
  <message>
   <location filename="planner/tides/summary.py" />
   <source>{tide_type} (form number {form_number:.2f})</source>
   <translation>{tide_type} (número de forma {form_number:.2f})</translation>
  </message>
  <message>
   <location filename="planner/tides/summary.py" />
   <source>semidiurnal: two tides a day, nearly alike</source>
   <translation>semidiurna: dos mareas al día, casi iguales</translation>
  </message>
  <message>
   <location filename="planner/tides/summary.py" />
   <source>mixed, mainly semidiurnal: two unequal tides a day</source>
   <translation>mixta, sobre todo semidiurna: dos mareas desiguales al día</translation>
  </message>
  <message>
   <location filename="planner/tides/summary.py" />
   <source>mixed, mainly diurnal: one or two very unequal tides a day</source>
   <translation>mixta, sobre todo diurna: una o dos mareas muy desiguales al día</translation>
  </message>
  <message>
   <location filename="planner/tides/summary.py" />
   <source>diurnal: one tide a day</source>
   <translation>diurna: una marea al día</translation>
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Observed waters come {hours_and_minutes} {side} than predicted.</source>
   <translation>Las pleamares y bajamares observadas llegan {hours_and_minutes} {side} de lo previsto.</translation>
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>later</source>
   <translation>más tarde</translation>
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>earlier</source>
   <translation>antes</translation>
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>{hours} h {minutes:02d} min</source>
   <translation>{hours} h {minutes:02d} min</translation>
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>{whole} min</source>
   <translation>{whole} min</translation>
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>above</source>
   <translation>por encima de</translation>
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>below</source>
   <translation>por debajo de</translation>
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>The tide would range over {height}, more than anywhere on Earth.</source>
   <translation>La marea tendría una carrera de {height}, más que en ningún lugar de la Tierra.</translation>
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Check whether the amplitudes are in feet or centimetres and say so in units.</source>
   <translation>Compruebe si las amplitudes están en pies o en centímetros e indíquelo en units.</translation>
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>{datum} should be the zero of this place, but the predicted {datum} stands at {height}.</source>
   <translation>{datum} debería ser el cero de este lugar, pero el {datum} previsto queda a {height}.</translation>
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Check mean_level: it is the mean sea level above the datum, in the file's units.</source>
   <translation>Compruebe mean_level: es el nivel medio del mar sobre el cero de referencia, en las unidades del archivo.</translation>
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Neither SA nor SSA is given: the water's seasonal rise and fall, often 5 to 15 cm, is left out.</source>
   <translation>No se dan ni SA ni SSA: queda fuera la subida y bajada del agua según la estación, a menudo de 5 a 15 cm.</translation>
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Add SA and SSA when the agency publishes them.</source>
   <translation>Añada SA y SSA cuando el organismo oficial las publique.</translation>
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Observed waters stand {height} {side} the predicted ones on average, high and low alike.</source>
   <translation>Las pleamares y bajamares observadas quedan de media {height} {side} las previstas, unas y otras por igual.</translation>
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Check that both count from the same zero, and that mean_level belongs to it.</source>
   <translation>Compruebe que unas y otras cuentan desde el mismo cero, y que mean_level corresponde a él.</translation>
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>What is left over rises and falls by {height} with the season, and SA is not among the constants.</source>
   <translation>La diferencia que queda sube y baja {height} con la estación, y SA no está entre las constantes.</translation>
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Add SA and SSA from the agency's list.</source>
   <translation>Añada SA y SSA de la lista del organismo oficial.</translation>
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>{seen} That is what lags worked out in this place's standard time would do.</source>
   <translation>{seen} Es lo que harían unos desfases calculados en la hora estándar de este lugar.</translation>
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Set phase_reference to "{clock}".</source>
   <translation>Ponga phase_reference en "{clock}".</translation>
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Observed heights vary {scale:.2f} times as much as the predicted ones: numbers in {truth} were read as {said}.</source>
   <translation>Las alturas observadas varían {scale:.2f} veces lo que varían las previstas: se leyeron números en {truth} como {said}.</translation>
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Set units to {truth} for the constants, or check the unit of the observations.</source>
   <translation>Ponga units en {truth} para las constantes, o compruebe la unidad de las observaciones.</translation>
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>{seen} One hour points to summer time.</source>
   <translation>{seen} Una hora apunta al horario de verano.</translation>
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Check whether the observations were noted in standard or in summer time.</source>
   <translation>Compruebe si las observaciones se anotaron en hora estándar o en horario de verano.</translation>
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>{seen} Lags worked out on a clock at {best} would fit best.</source>
   <translation>{seen} Lo que mejor encajaría son desfases calculados con un reloj en {best}.</translation>
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Ask for the clock of the phase lags, and check date and clock of the observations.</source>
   <translation>Pregunte con qué reloj se calcularon los desfases, y compruebe la fecha y el reloj de las observaciones.</translation>
  </message>
  <message>
   <location filename="planner/tides/tide.py" />
   <source>{year} is outside the years that tides are computed for; choose dates from {first_year} to {last_year}</source>
   <translation>{year} queda fuera de los años para los que se calculan mareas; elija fechas entre {first_year} y {last_year}</translation>
  </message>
  <message>
   <location filename="planner/trials/grouping.py" />
   <source>{metre} to {next_metre} m ({low_ft:.0f} to {high_ft:.0f} ft)</source>
   <translation>{metre} a {next_metre} m ({low_ft:.0f} a {high_ft:.0f} ft)</translation>
  </message>
  <message>
   <location filename="planner/trials/grouping.py" />
   <source>trap design</source>
   <translation>modelo de nasa</translation>
  </message>
  <message>
   <location filename="planner/trials/grouping.py" />
   <source>number of entrances</source>
   <translation>número de entradas</translation>
  </message>
  <message>
   <location filename="planner/trials/grouping.py" />
   <source>colour</source>
   <translation>color</translation>
  </message>
  <message>
   <location filename="planner/trials/grouping.py" />
   <source>single traps</source>
   <translation>nasas una a una</translation>
  </message>
  <message>
   <location filename="planner/trials/grouping.py" />
   <source>length of soak</source>
   <translation>tiempo en el agua</translation>
  </message>
  <message>
   <location filename="planner/trials/grouping.py" />
   <source>choose one of {measures}</source>
   <translation>elija entre {measures}</translation>
  </message>
  <message>
   <location filename="planner/trials/grouping.py" />
   <source>choose one of {listed}</source>
   <translation>elija entre {listed}</translation>
  </message>
  <message>
   <location filename="planner/trials/grouping.py" />
   <source>under 18 h</source>
   <translation>menos de 18 h</translation>
  </message>
  <message>
   <location filename="planner/trials/grouping.py" />
   <source>18 to 30 h</source>
   <translation>18 a 30 h</translation>
  </message>
  <message>
   <location filename="planner/trials/grouping.py" />
   <source>30 to 54 h</source>
   <translation>30 a 54 h</translation>
  </message>
  <message>
   <location filename="planner/trials/grouping.py" />
   <source>54 h and more</source>
   <translation>54 h y más</translation>
  </message>
  <message>
   <location filename="planner/trials/grouping.py" />
   <source>{found} entrances</source>
   <translation>{found} entradas</translation>
  </message>
  <message>
   <location filename="planner/trials/grouping.py" />
   <source>cannot be compared</source>
   <translation>no se puede comparar</translation>
  </message>
  <message>
   <location filename="planner/trials/grouping.py" />
   <source>is no way to group hauls</source>
   <translation>no es un modo de agrupar recogidas</translation>
  </message>
  <message>
   <location filename="planner/trials/layout.py" />
   <source> One trip alone settles nothing: move the traps again next time.</source>
   <translation> Una sola salida no resuelve nada: vuelva a mover las nasas la próxima vez.</translation>
  </message>
  <message>
   <location filename="planner/trials/layout.py" />
   <source>One design only: there is nothing to compare, so the traps are dealt by lot.</source>
   <translation>Un solo modelo: no hay nada que comparar, así que las nasas se reparten a suertes.</translation>
  </message>
  <message>
   <location filename="planner/trials/layout.py" />
   <source>After this trip{how} the log holds {efficiency:.0%} of all that so many hauls could tell of the designs</source>
   <translation>Tras esta salida{how} el registro tiene el {efficiency:.0%} de todo lo que tantas recogidas podrían decir de los modelos</translation>
  </message>
  <message>
   <location filename="planner/trials/layout.py" />
   <source>{value:.0%} {words}</source>
   <translation>{value:.0%} {words}</translation>
  </message>
  <message>
   <location filename="planner/trials/layout.py" />
   <source>, with the traps as you moved them,</source>
   <translation>, con las nasas como usted las movió,</translation>
  </message>
  <message>
   <location filename="planner/trials/layout.py" />
   <source>as proposed</source>
   <translation>tal como se propuso</translation>
  </message>
  <message>
   <location filename="planner/trials/layout.py" />
   <source>with the traps left where they are</source>
   <translation>con las nasas donde están</translation>
  </message>
  <message>
   <location filename="planner/trials/layout.py" />
   <source>on average when dealt at random</source>
   <translation>de media si se reparten al azar</translation>
  </message>
  <message>
   <location filename="planner/trials/permutation.py" />
   <source>permutation within trips</source>
   <translation>permutación dentro de cada salida</translation>
  </message>
  <message>
   <location filename="planner/trials/permutation.py" />
   <source>permutation within trips (large-sample limit)</source>
   <translation>permutación dentro de cada salida (límite de muestra grande)</translation>
  </message>
  <message>
   <location filename="planner/trials/permutation.py" />
   <source>none: no trip had hauls of two groups to compare</source>
   <translation>ninguna: en ninguna salida hubo recogidas de dos grupos que comparar</translation>
  </message>
  <message>
   <location filename="planner/trials/permutation.py" />
   <source>none: every count is zero</source>
   <translation>ninguna: todos los recuentos son cero</translation>
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>more haul</source>
   <translation>recogida más</translation>
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>more hauls</source>
   <translation>recogidas más</translation>
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>About {hauls} of each{ends}{trips}, dealt evenly over spots and trips, would bring a difference of {difference:g} times to light 4 times in 5, or show that there is none.</source>
   <translation>Alrededor de {hauls} de cada grupo{ends}{trips}, con reparto igual entre puestos y salidas, sacarían a la luz, 4 de cada 5 veces, una diferencia de {difference:g} veces, o mostrarían que no la hay.</translation>
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>There are hauls enough to show a difference of {difference:g} times; what is seen is smaller than that, or not the same everywhere.</source>
   <translation>Hay recogidas suficientes para mostrar una diferencia de {difference:g} veces; lo que se ve es menor, o no es igual en todas partes.</translation>
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>, about {plural} like yours</source>
   <translation>, alrededor de {plural} como las suyas</translation>
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>The gap seen so far is smaller, {ratio:.1f} times: to be sure of one like it takes about {plural} of each.</source>
   <translation>La diferencia vista hasta ahora es menor, {ratio:.1f} veces: estar seguro de una así pide alrededor de {plural} de cada grupo.</translation>
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>At your pace the next trip ends about {first}, and the last of these {plural} about {days:%B %Y}.</source>
   <translation>A su ritmo, la próxima salida acaba hacia el {first}, y la última de estas {plural}, hacia {days:%B %Y}.</translation>
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>Nothing more is needed for this question.</source>
   <translation>Para esta pregunta no hace falta nada más.</translation>
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>Differences smaller than about {can_hide:.1f} times may still hide in these hauls.</source>
   <translation>En estas recogidas aún pueden esconderse diferencias menores de unas {can_hide:.1f} veces.</translation>
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>Rates are for a soak of {common_soak_h:.0f} h.</source>
   <translation>Las tasas son para un tiempo en el agua de {common_soak_h:.0f} h.</translation>
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>At your pace that trip ends about {first}.</source>
   <translation>A su ritmo, esa salida acaba hacia el {first}.</translation>
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>What it takes can be told once hauls of two groups or more, counted on the same trips, have caught something.</source>
   <translation>Lo que hace falta se podrá decir cuando recogidas de dos grupos o más, contadas en las mismas salidas, hayan capturado algo.</translation>
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>trips</source>
   <translation>salidas</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>crabs</source>
   <translation>cangrejos</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>others</source>
   <translation>de otras especies</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>{hauls} in {trips}</source>
   <translation>{hauls} en {trips}</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>Too early to tell, after {basis}: {gap}</source>
   <translation>Aún es pronto para saberlo, tras {basis}: {gap}</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>Chance alone makes a gap as wide as this in {one_in} of such logs.</source>
   <translation>Registros así en que el puro azar da una diferencia tan grande: {one_in}.</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>Hardly ever in the same trip: {pairs}. A difference between them may be the trip's doing.</source>
   <translation>Casi nunca en la misma salida: {pairs}. Una diferencia entre ellos puede deberse a la salida.</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>{one:.1f} {unit} a haul from {name} and {two:.1f} from {other_name}</source>
   <translation>{one:.1f} {unit} por recogida con {name} y {two:.1f} con {other_name}</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>Nothing to compare yet, after {basis}: it takes two groups of two counted hauls or more.</source>
   <translation>Aún no hay nada que comparar, tras {basis}: hacen falta dos grupos de dos recogidas con recuento o más.</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>Nothing to tell apart yet: {basis}, and every count is zero.</source>
   <translation>Aún no hay nada que distinguir: {basis}, y todos los recuentos son cero.</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>{early}, but never side by side in one trip.</source>
   <translation>{early}, pero nunca juntos en una misma salida.</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>{early}, but the layout cannot tell the groups from where or when they were set.</source>
   <translation>{early}, pero el reparto no permite separar los grupos de dónde o cuándo se calaron.</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>Chance alone hardly ever makes a gap as wide as this.</source>
   <translation>El puro azar casi nunca da una diferencia así de grande.</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>Settled, after {basis}: no difference of {care_ratio:g} times is left to find ({gap}). {chance}</source>
   <translation>Resuelto, tras {basis}: ya no cabe una diferencia de {care_ratio:g} veces ({gap}). {chance}</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>Settled, after {basis}: {better} gives about {ratio:.1f} times what {other} gives ({range}){worth}; {gap}. {chance}</source>
   <translation>Resuelto, tras {basis}: {better} da unas {ratio:.1f} veces lo que da {other} ({range}){worth}; {gap}. {chance}</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>They differ, but which is best is not clear after {basis}: {gap}. {chance}</source>
   <translation>Difieren, pero no está claro cuál es mejor tras {basis}: {gap}. {chance}</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>Leaning towards {better}, after {basis}: {gap}. {chance}</source>
   <translation>Se inclina por {better}, tras {basis}: {gap}. {chance}</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>Fewer than {few_hauls} counted hauls: {listed}. One haul is not judged.</source>
   <translation>Menos de {few_hauls} recogidas con recuento: {listed}. Con una sola recogida no se juzga.</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>{hauls} without a count left out: not recorded is not zero.</source>
   <translation>Fuera por falta de recuento: {hauls}; no anotado no es cero.</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>Spots are not all recorded, so a good spot may pass for a good trap.</source>
   <translation>No todos los puestos están anotados, así que un buen puesto puede pasar por una buena nasa.</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>The soak of {share} of the hauls is not known; they are taken to be like the others.</source>
   <translation>De algunas recogidas ({share}) no se sabe el tiempo en el agua; se toman como las demás.</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>Soaks differ: {short} mostly {short_h:.0f} h, {long} {long_h:.0f} h. Rates are brought to one soak by a curve; compare like soaks to be sure.</source>
   <translation>Los tiempos en el agua difieren: {short} casi siempre {short_h:.0f} h, {long} {long_h:.0f} h. Las tasas se llevan a un mismo tiempo con una curva; para estar seguro, compare tiempos parecidos.</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>{one} and {other}</source>
   <translation>{one} y {other}</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>, and {more} more pairs</source>
   <translation>, y {more} pares más</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>Hardly ever in the same spot: {pairs}. A difference between them may be the spot's doing.</source>
   <translation>Casi nunca en el mismo puesto: {pairs}. Una diferencia entre ellos puede deberse al puesto.</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>{one:.0%} light from {name} and {two:.0%} from {other_name}</source>
   <translation>{one:.0%} de vacíos con {name} y {two:.0%} con {other_name}</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>counted haul</source>
   <translation>recogida con recuento</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>counted hauls</source>
   <translation>recogidas con recuento</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>, less than the {care_ratio:g} worth caring about</source>
   <translation>, menos que las {care_ratio:g} veces que importarían</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source> and {names} more</source>
   <translation> y {names} más</translation>
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>One trip alone: it says how that day went, no more.</source>
   <translation>Una sola salida: dice cómo fue ese día y nada más.</translation>
  </message>
  <message>
   <location filename="planner/trips/allowed.py" />
   <source>{weekdays} are not free</source>
   <translation>{weekdays} no son días libres</translation>
  </message>
  <message>
   <location filename="planner/trips/allowed.py" />
   <source>marked as not free</source>
   <translation>marcado como no libre</translation>
  </message>
  <message>
   <location filename="planner/trips/allowed.py" />
   <source>closed</source>
   <translation>en veda</translation>
  </message>
  <message>
   <location filename="planner/trips/calendar_days.py" />
   <source>export the calendar again as an iCalendar file (.ics)</source>
   <translation>vuelva a exportar el calendario como archivo iCalendar (.ics)</translation>
  </message>
  <message>
   <location filename="planner/trips/calendar_days.py" />
   <source>is not a calendar ({error})</source>
   <translation>no es un calendario ({error})</translation>
  </message>
  <message>
   <location filename="planner/trips/calendar_days.py" />
   <source>cannot be understood ({error})</source>
   <translation>no se entiende ({error})</translation>
  </message>
  <message>
   <location filename="planner/trips/calendar_days.py" />
   <source>is too large for a calendar</source>
   <translation>es demasiado grande para ser un calendario</translation>
  </message>
  <message>
   <location filename="planner/trips/calendar_days.py" />
   <source>is not a calendar</source>
   <translation>no es un calendario</translation>
  </message>
  <message>
   <location filename="planner/trips/calendar_days.py" />
   <source>entry {number}</source>
   <translation>entrada {number}</translation>
  </message>
  <message>
   <location filename="planner/trips/candidates.py" />
   <source>outside your free days and hours</source>
   <translation>fuera de sus días y horas libres</translation>
  </message>
  <message>
   <location filename="planner/trips/candidates.py" />
   <source>a trap in the water on a closed day</source>
   <translation>una nasa en el agua en un día de veda</translation>
  </message>
  <message>
   <location filename="planner/trips/candidates.py" />
   <source>set or haul not wholly in daylight</source>
   <translation>calada o recogida no del todo con luz de día</translation>
  </message>
  <message>
   <location filename="planner/trips/candidates.py" />
   <source>too little water at the ramp</source>
   <translation>muy poca agua en la rampa</translation>
  </message>
  <message>
   <location filename="planner/trips/candidates.py" />
   <source>soak too short or too long</source>
   <translation>tiempo en el agua demasiado corto o largo</translation>
  </message>
  <message>
   <location filename="planner/trips/candidates.py" />
   <source>a trap not covered at the lowest water</source>
   <translation>una nasa al descubierto en el nivel más bajo del agua</translation>
  </message>
  <message>
   <location filename="planner/trips/effect_words.py" />
   <source>about {share:.0%} fewer keepers</source>
   <translation>alrededor de un {share:.0%} menos de cangrejos de talla</translation>
  </message>
  <message>
   <location filename="planner/trips/effect_words.py" />
   <source>{share:.0%} fewer</source>
   <translation>{share:.0%} menos</translation>
  </message>
  <message>
   <location filename="planner/trips/effect_words.py" />
   <source>about {share:.0%} more keepers</source>
   <translation>alrededor de un {share:.0%} más de cangrejos de talla</translation>
  </message>
  <message>
   <location filename="planner/trips/effect_words.py" />
   <source>{share:.0%} more</source>
   <translation>{share:.0%} más</translation>
  </message>
  <message>
   <location filename="planner/trips/effect_words.py" />
   <source>Time of year: {ratio} than on your logged trips together ({range}), from {hauls}.</source>
   <translation>Época del año: {ratio} que en el conjunto de sus salidas anotadas ({range}), según {hauls}.</translation>
  </message>
  <message>
   <location filename="planner/trips/effect_words.py" />
   <source>Traps spread evenly over your spots, of the designs you keep: {ratio} than in your log, from {hauls}.</source>
   <translation>Nasas repartidas por igual entre sus puestos, de los modelos que usted tiene: {ratio} que en su registro, según {hauls}.</translation>
  </message>
  <message>
   <location filename="planner/trips/effect_words.py" />
   <source>Of your spots {spot} is the best: {ratio} than an average haul ({range}), from {hauls} there.</source>
   <translation>De sus puestos, {spot} es el mejor: {ratio} que una recogida media ({range}), según {hauls} de allí.</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>your free hours</source>
   <translation>sus horas libres</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>the open days</source>
   <translation>los días sin veda</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>daylight</source>
   <translation>las horas de luz</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>the hours with water at the ramp</source>
   <translation>las horas con agua en la rampa</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>the soaks allowed</source>
   <translation>los tiempos en el agua permitidos</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>free more days or longer hours, if you can</source>
   <translation>libere más días u horas más largas, si puede</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>look at other days</source>
   <translation>mire otros días</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>look at longer days, or see whether set and haul take as long as you wrote</source>
   <translation>mire días más largos, o vea si la calada y la recogida duran tanto como anotó</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>see whether the ramp's lowest level is right, or launch elsewhere</source>
   <translation>vea si el nivel mínimo de la rampa es correcto, o bote en otro sitio</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>see whether the soaks you accept suit your free days, and the longest one allowed</source>
   <translation>vea si los tiempos en el agua que acepta cuadran con sus días libres y con el máximo permitido</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>choose deeper spots, or see whether depths and margin are right</source>
   <translation>elija puestos más hondos, o vea si las profundidades y el margen son correctos</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>No set and haul keep every limit. Those that came furthest failed by this: {limit}. So {remedy}.</source>
   <translation>Ninguna calada con su recogida cumple todos los límites. A las que más lejos llegaron las detuvo esto: {limit}. Así que {remedy}.</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>{name} promises {keepers}</source>
   <translation>{name} promete {keepers}</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source> {name} has the more light crabs.</source>
   <translation> {name} tiene más cangrejos vacíos.</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>{fewer} fewer than the best plan{tail}</source>
   <translation>{fewer} menos que el mejor plan{tail}</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>{limit}, within {kept}</source>
   <translation>{limit}, dentro de {kept}</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>No set and haul fit into these days any more: look at later days, or at more.</source>
   <translation>En estos días ya no caben una calada y una recogida: mire días posteriores, o más días.</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>{told}: too near to tell apart beforehand. Take the one that suits you.</source>
   <translation>{told}: demasiado parecidos para distinguirlos de antemano. Elija el que más le convenga.</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>plan {rank}</source>
   <translation>plan {rank}</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>your own plan</source>
   <translation>su propio plan</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>as many as the best plan</source>
   <translation>tantos como el mejor plan</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>, too near to tell apart</source>
   <translation>, demasiado parecidos para distinguirlos</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>closed ({why_closed})</source>
   <translation>veda ({why_closed})</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>it is over, or too near the last day looked at</source>
   <translation>ya pasó, o está demasiado cerca del último día examinado</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>Soak</source>
   <translation>En el agua</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>Full keepers</source>
   <translation>Llenos de talla</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>Light crabs</source>
   <translation>Vacíos</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>Least cover</source>
   <translation>Mín. agua encima</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>Daylight left after the set</source>
   <translation>Luz de día tras la calada</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>Daylight left after the haul</source>
   <translation>Luz de día tras la recogida</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>To look out for</source>
   <translation>Precauciones</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>more full keeper</source>
   <translation>lleno de talla más</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>more full keepers</source>
   <translation>llenos de talla más</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>Both promise as many full keepers</source>
   <translation>Los dos prometen los mismos llenos de talla</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>With a set on {day} the best haul is {other}: {keepers} full keepers{cost}.</source>
   <translation>Calando el {day}, la mejor recogida es el {other}: {keepers} llenos de talla{cost}.</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>With a haul on {day} the best set is {other}: {keepers} full keepers{cost}.</source>
   <translation>Recogiendo el {day}, la mejor calada es el {other}: {keepers} llenos de talla{cost}.</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>No set on {day}: {why}.</source>
   <translation>Sin calada el {day}: {why}.</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>No haul on {day}: {why}.</source>
   <translation>Sin recogida el {day}: {why}.</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>not checked</source>
   <translation>no comprobado</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>Wish for {wish}</source>
   <translation>Deseo de {wish}</translation>
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>nothing</source>
   <translation>nada</translation>
  </message>
  <message>
   <location filename="planner/trips/looking_back.py" />
   <source>no place told</source>
   <translation>sin lugar anotado</translation>
  </message>
  <message>
   <location filename="planner/trips/looking_back.py" />
   <source>no design told</source>
   <translation>sin modelo anotado</translation>
  </message>
  <message>
   <location filename="planner/trips/looking_back.py" />
   <source>no spot told</source>
   <translation>sin puesto anotado</translation>
  </message>
  <message>
   <location filename="planner/trips/looking_back.py" />
   <source>no bait told</source>
   <translation>sin cebo anotado</translation>
  </message>
  <message>
   <location filename="planner/trips/promises.py" />
   <source>{trips} forecast {forecast} full keepers in all; {came} came. {inside} of {n} came within the range forecast; in the long run 8 of 10 should.</source>
   <translation>{trips} pronosticaron {forecast} llenos de talla en total; llegaron {came}. Dentro del intervalo pronosticado: {inside} de {n}; a la larga deberían ser 8 de cada 10.</translation>
  </message>
  <message>
   <location filename="planner/trips/promises.py" />
   <source>No trip begun from a plan has been counted and judged yet. What its plan forecast is kept with it, and will be held here against what came.</source>
   <translation>Aún no se ha contado ni examinado ninguna salida empezada desde un plan. Lo que pronosticó su plan se guarda con ella y aquí se comparará con lo que llegó.</translation>
  </message>
  <message>
   <location filename="planner/trips/promises.py" />
   <source>1 trip begun from a plan was</source>
   <translation>Para 1 salida empezada desde un plan se</translation>
  </message>
  <message>
   <location filename="planner/trips/promises.py" />
   <source>{n} trips begun from plans were</source>
   <translation>Para {n} salidas empezadas desde planes se</translation>
  </message>
  <message>
   <location filename="planner/trips/similar.py" />
   <source>days</source>
   <translation>días</translation>
  </message>
  <message>
   <location filename="planner/trips/similar.py" />
   <source>same moon</source>
   <translation>misma luna</translation>
  </message>
  <message>
   <location filename="planner/trips/similar.py" />
   <source>moon {days} apart</source>
   <translation>luna a {days} de distancia</translation>
  </message>
  <message>
   <location filename="planner/trips/similar.py" />
   <source>same time of year</source>
   <translation>misma época del año</translation>
  </message>
  <message>
   <location filename="planner/trips/similar.py" />
   <source>{days} apart in the year</source>
   <translation>a {days} en el calendario</translation>
  </message>
  <message>
   <location filename="planner/trips/similar.py" />
   <source>water {degrees_apart}</source>
   <translation>agua {degrees_apart}</translation>
  </message>
  <message>
   <location filename="planner/trips/similar.py" />
   <source>last light trip {days} before (now {now})</source>
   <translation>última salida con muchos vacíos {days} antes (ahora {now})</translation>
  </message>
  <message>
   <location filename="planner/trips/similar.py" />
   <source>a light trip {days} before, none now</source>
   <translation>una salida con muchos vacíos {days} antes, ahora ninguna</translation>
  </message>
  <message>
   <location filename="planner/trips/similar.py" />
   <source>no light trip before it, one {days} before now</source>
   <translation>ninguna salida con muchos vacíos antes de ella, ahora una {days} antes</translation>
  </message>
  <message>
   <location filename="planner/trips/wish_words.py" />
   <source>met</source>
   <translation>cumplido</translation>
  </message>
  <message>
   <location filename="planner/trips/wish_words.py" />
   <source>not met</source>
   <translation>no cumplido</translation>
  </message>
  <message>
   <location filename="planner/trips/wish_words.py" />
   <source>rising water at the haul</source>
   <translation>agua subiendo al recoger</translation>
  </message>
  <message>
   <location filename="planner/trips/wish_words.py" />
   <source>falling water at the haul</source>
   <translation>agua bajando al recoger</translation>
  </message>
  <message>
   <location filename="planner/trips/wish_words.py" />
   <source>turning water at the haul</source>
   <translation>cambio de marea al recoger</translation>
  </message>
  <message>
   <location filename="planner/trips/wish_words.py" />
   <source>a haul early in the day</source>
   <translation>una recogida temprano en el día</translation>
  </message>
  <message>
   <location filename="planner/trips/wish_words.py" />
   <source>a haul late in the day</source>
   <translation>una recogida tarde en el día</translation>
  </message>
  <message>
   <location filename="planner/trips/wish_words.py" />
   <source>Wish for {wish}: {outcome}.</source>
   <translation>Deseo de {wish}: {outcome}.</translation>
  </message>
  <message>
   <location filename="planner/trips/wish_words.py" />
   <source>Against the most that any plan of these days promises it has {keepers}.</source>
   <translation>Frente al máximo que promete algún plan de estos días, tiene {keepers}.</translation>
  </message>
  <message>
   <location filename="planner/trips/wish_words.py" />
   <source>a short soak</source>
   <translation>poco tiempo en el agua</translation>
  </message>
  <message>
   <location filename="planner/trips/wish_words.py" />
   <source>{soak}, ranked as if each day of soak took {share:.0%} of the keepers</source>
   <translation>{soak}, ordenado como si cada día en el agua quitara un {share:.0%} de los de talla</translation>
  </message>
  <message>
   <location filename="planner/trips/wish_words.py" />
   <source>one long drive, not two</source>
   <translation>un solo viaje largo, no dos</translation>
  </message>
  <message>
   <location filename="planner/trips/wish_words.py" />
   <source>{minutes:.0f} min of daylight after the haul</source>
   <translation>{minutes:.0f} min de luz de día tras la recogida</translation>
  </message>
  <message>
   <location filename="planner/trips/wish_words.py" />
   <source>met, set and haul are on one day</source>
   <translation>cumplido, calada y recogida son el mismo día</translation>
  </message>
  <message>
   <location filename="planner/trips/wish_words.py" />
   <source>not met, ranked by half the keepers for two drives</source>
   <translation>no cumplido, ordenado por la mitad de los de talla, al ser dos viajes</translation>
  </message>
  <message>
   <location filename="planner/trips/wish_words.py" />
   <source>fewer full keeper</source>
   <translation>lleno de talla menos</translation>
  </message>
  <message>
   <location filename="planner/trips/wish_words.py" />
   <source>fewer full keepers</source>
   <translation>llenos de talla menos</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>no</source>
   <translation>ningún</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>one</source>
   <translation>un</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>two</source>
   <translation>dos</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>three</source>
   <translation>tres</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>four</source>
   <translation>cuatro</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>five</source>
   <translation>cinco</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>six</source>
   <translation>seis</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>seven</source>
   <translation>siete</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>eight</source>
   <translation>ocho</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>nine</source>
   <translation>nueve</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>ten</source>
   <translation>diez</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>eleven</source>
   <translation>once</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>twelve</source>
   <translation>doce</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>All {number} spots stay covered, the shallowest ({spot}) by {least} at {at}.</source>
   <translation>Los {number} puestos quedan cubiertos, el menos profundo ({spot}) con {least} de agua encima el {at}.</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>At the ramp at least {height} more water than you need, out and back on both days.</source>
   <translation>En la rampa, al menos {height} de agua más de la que necesita, a la ida y a la vuelta, los dos días.</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>Traps fill more and more slowly: a day would bring about {day_one} of these {total}, the other {soak_h} hours the rest.</source>
   <translation>Las nasas se llenan cada vez más despacio: un día daría unos {day_one} de estos {total}, y las otras {soak_h} horas, el resto.</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>Set any time from {first} to {last}{cost}.</source>
   <translation>Cale a cualquier hora de {first} a {last}{cost}.</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>from {before} to {after}</source>
   <translation>de {before} a {after}</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>The water falls while you haul, {levels}.</source>
   <translation>El agua baja mientras recoge, {levels}.</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>learned from {trips} here</source>
   <translation>aprendido de {trips} aquí</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>from published catch rates, as no trip here tells the catch yet</source>
   <translation>según tasas de captura publicadas, pues ninguna salida de aquí dice aún la captura</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>{count} full keepers from {traps}, {source}.</source>
   <translation>{count} llenos de talla con {traps}, {source}.</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>Light crabs {light}.</source>
   <translation>Cangrejos vacíos: {light}.</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>{span} of daylight left when the haul is over.</source>
   <translation>{span} de luz de día al acabar la recogida.</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>The spot stays covered, by {least} at {at}.</source>
   <translation>El puesto queda cubierto, con {least} de agua encima el {at}.</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>Both spots stay covered, the shallower ({spot}) by {least} at {at}.</source>
   <translation>Los dos puestos quedan cubiertos, el menos profundo ({spot}) con {least} de agua encima el {at}.</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>At the ramp at least {height} more water than you need, out and back both times.</source>
   <translation>En la rampa, al menos {height} de agua más de la que necesita, a la ida y a la vuelta, las dos veces.</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>; the latest would cost {keepers}</source>
   <translation>; la última costaría {keepers}</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>{kind} at about {clock} while you haul; slack can come earlier or later than that.</source>
   <translation>{kind} hacia las {clock} mientras recoge; la estoa puede llegar antes o después.</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>The water hardly changes while you haul ({height}).</source>
   <translation>El agua apenas cambia mientras recoge ({height}).</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>The water rises while you haul, {levels}.</source>
   <translation>El agua sube mientras recoge, {levels}.</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>No ramp level entered: whether you can launch was not checked.</source>
   <translation>Sin nivel de la rampa: no se ha comprobado si puede botar la embarcación.</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>Little daylight left after the set: begin on time and carry lights.</source>
   <translation>Queda poca luz de día tras la calada: empiece a tiempo y lleve luces.</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>Little daylight left after the haul: begin on time and carry lights.</source>
   <translation>Queda poca luz de día tras la recogida: empiece a tiempo y lleve luces.</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>The clocks change between set and haul: set by {set_zone}, haul by {haul_zone}.</source>
   <translation>La hora oficial cambia entre la calada y la recogida: cale según {set_zone}, recoja según {haul_zone}.</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>Water temperature unknown: the catch was not lowered for cold water.</source>
   <translation>Temperatura del agua desconocida: la captura no se ha rebajado por agua fría.</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>No logged trip tells yet how light crabs are here: the share is a general one.</source>
   <translation>Ninguna salida anotada dice aún cuántos cangrejos vacíos hay aquí: la proporción es general.</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>No date entered for when you checked the rules here: check with the agency.</source>
   <translation>Sin fecha de cuándo comprobó las normas de aquí: consulte a la autoridad pesquera.</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>High water</source>
   <translation>Pleamar</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>Low water</source>
   <translation>Bajamar</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>Only {height} over the shallowest trap at the lowest water: wind and high pressure can take that away. Check the weather.</source>
   <translation>Solo {height} sobre la nasa menos profunda en el nivel más bajo: el viento y las altas presiones pueden llevarse esa agua. Consulte el tiempo.</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>Water about {temperature}: crabs hardly move, and few enter a trap (how few is a judgement).</source>
   <translation>Agua a unos {temperature}: los cangrejos apenas se mueven y pocos entran en una nasa (cuántos es cuestión de criterio).</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>Closed from {day} ({why}): every trap must be out before it.</source>
   <translation>Veda desde el {day} ({why}): todas las nasas deben estar fuera del agua antes.</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>You entered {day} {year} as the day you checked the rules here, which is still to come: correct it, and check with the agency.</source>
   <translation>Anotó el {day} de {year} como el día en que comprobó las normas de aquí, y aún no ha llegado: corríjalo y consulte a la autoridad pesquera.</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>full keeper</source>
   <translation>lleno de talla</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>full keepers</source>
   <translation>llenos de talla</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>Water about {temperature} and a soak of {soak}: crabs weaken and fight in warm traps (common practice is to haul sooner).</source>
   <translation>Agua a unos {temperature} y un tiempo en el agua de {soak}: en nasas calientes los cangrejos se debilitan y se pelean (la práctica habitual es recoger antes).</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>You last checked the rules here {months} ago: check with the agency again.</source>
   <translation>Comprobó las normas de aquí por última vez hace {months}: vuelva a consultar a la autoridad pesquera.</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>month</source>
   <translation>mes</translation>
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>months</source>
   <translation>meses</translation>
  </message>
  <message>
   <location filename="planner/ui/charts.py" />
   <source>{local:%a} {local.day}</source>
   <translation>{local:%a} {local.day}</translation>
  </message>
  <message>
   <location filename="planner/ui/charts.py" />
   <source>{local.day} {local:%b}</source>
   <translation>{local.day} {local:%b}</translation>
  </message>
  <message>
   <location filename="planner/ui/charts.py" />
   <source>{local:%b}</source>
   <translation>{local:%b}</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/compare_dialog.py" />
   <source>First plan</source>
   <translation>Primer plan</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/compare_dialog.py" />
   <source>Second plan</source>
   <translation>Segundo plan</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/compare_dialog.py" />
   <source>Compare two plans</source>
   <translation>Comparar dos planes</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/compare_dialog.py" />
   <source>In bold: what differs</source>
   <translation>En negrita: lo que difiere</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/compare_dialog.py" />
   <source>Close</source>
   <translation>Cerrar</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/compare_dialog.py" />
   <source>There are no two plans to compare.</source>
   <translation>No hay dos planes que comparar.</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/like_it.py" />
   <source>No trips are logged here yet. Logged trips that had the same moon, season and water as the chosen day will be listed here, with how full the crabs were.</source>
   <translation>Aquí aún no hay salidas anotadas. Aquí se verán las salidas anotadas que tuvieron la misma luna, temporada y agua que el día elegido, con lo llenos que estaban los cangrejos.</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/like_it.py" />
   <source>No trip was logged here before that day.</source>
   <translation>Antes de ese día no se anotó aquí ninguna salida.</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/like_it.py" />
   <source>{light} of {judged} light: {share}</source>
   <translation>{light} de {judged} vacíos: {share}</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/like_it.py" />
   <source>Past trips like it</source>
   <translation>Salidas parecidas</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/like_it.py" />
   <source>Past trips like the chosen day</source>
   <translation>Salidas pasadas parecidas al día elegido</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/like_it.py" />
   <source>Past trips like {day}</source>
   <translation>Salidas pasadas parecidas al {day}</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/panels.py" />
   <source>The chosen plan, and past trips like the day</source>
   <translation>El plan elegido y las salidas pasadas parecidas al día</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/panels.py" />
   <source>Chosen plan</source>
   <translation>Plan elegido</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_panel.py" />
   <source>Com&amp;pare…</source>
   <translation>Com&amp;parar…</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_panel.py" />
   <source>See this plan and another side by side  (Alt+P)</source>
   <translation>Ver este plan y otro lado a lado  (Alt+P)</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_panel.py" />
   <source>Why this plan, and what to mind</source>
   <translation>Por qué este plan, y qué tener en cuenta</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_panel.py" />
   <source>Load up for this plan</source>
   <translation>Preparar esta salida</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_panel.py" />
   <source>Open the checklist and the trip sheet for the chosen plan</source>
   <translation>Abrir la lista de comprobación y la hoja de la salida del plan elegido</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_panel.py" />
   <source>Log this trip</source>
   <translation>Anotar esta salida</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_panel.py" />
   <source>Open the trip's rows in Log hauls, with the plan's times and traps</source>
   <translation>Abrir las filas de la salida en Anotar recogidas, con las horas y las nasas del plan</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_panel.py" />
   <source>Chosen: {plan_name}</source>
   <translation>Elegido: {plan_name}</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_panel.py" />
   <source> (any time to {clock})</source>
   <translation> (a cualquier hora hasta las {clock})</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_panel.py" />
   <source>Set {begin}, haul {day_clock} {zone}; soak {soak}</source>
   <translation>Calar {begin}, recoger {day_clock} {zone}; en el agua {soak}</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_panel.py" />
   <source>Click a day on the strip to read what stands in its way.</source>
   <translation>Haga clic en un día de la franja para leer qué se lo impide.</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_panel.py" />
   <source>When</source>
   <translation>Cuándo</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_panel.py" />
   <source>What</source>
   <translation>Qué</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_panel.py" />
   <source>Water</source>
   <translation>Agua</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_panel.py" />
   <source>The soak</source>
   <translation>El tiempo en el agua</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_panel.py" />
   <source>Pick a plan to see its water, its light and its reasons.</source>
   <translation>Elija un plan para ver su agua, su luz y sus razones.</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_words.py" />
   <source>its set</source>
   <translation>su calada</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_words.py" />
   <source>its haul</source>
   <translation>su recogida</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_words.py" />
   <source>set and haul together</source>
   <translation>la calada y la recogida juntas</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_words.py" />
   <source>Moving {held}: ← → by a quarter hour, with Shift by a day; Enter keeps it, Escape takes it back.</source>
   <translation>Moviendo {held}: ← → de cuarto en cuarto de hora, con Mayús de día en día; Intro lo fija, Escape lo deshace.</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_words.py" />
   <source>Move a plan: drag it or one of its ends on the strip, or press S (set), H (haul) or M (both) there and then ← →.</source>
   <translation>Para mover un plan, arrástrelo a él o uno de sus extremos en la franja, o pulse allí S (calada), H (recogida) o M (ambas) y después ← →.</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_words.py" />
   <source>Your own: set {set_at}, haul {haul_at}</source>
   <translation>El suyo: calar {set_at}, recoger {haul_at}</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_words.py" />
   <source>{count} full keepers</source>
   <translation>{count} llenos de talla</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_words.py" />
   <source>light crabs {light}</source>
   <translation>cangrejos vacíos: {light}</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_words.py" />
   <source>No plan ranks above this one; the range of its keepers says how sure that is.</source>
   <translation>Ningún plan está por encima de este; el margen de sus cangrejos de talla dice cuán seguro es.</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_words.py" />
   <source>Closed: {why_closed}.</source>
   <translation>Veda: {why_closed}.</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_words.py" />
   <source>least cover {height}</source>
   <translation>mínimo de agua encima {height}</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_words.py" />
   <source>No set and no haul: {reasons}</source>
   <translation>Ni calada ni recogida: {reasons}</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_words.py" />
   <source> Not free: {reason}</source>
   <translation> No está libre: {reason}</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_words.py" />
   <source>{fewer} fewer than plan 1</source>
   <translation>{fewer} menos que el plan 1</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plan_words.py" />
   <source>as many as plan 1</source>
   <translation>tantos como el plan 1</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>{count:,}</source>
   <translation>{count:,}</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>Rank by expected full keepers; ↑ and ↓: places gained and lost by the last wish</source>
   <translation>Orden por llenos de talla esperados; ↑ y ↓: posiciones ganadas y perdidas con el último deseo</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>When the first trap goes in</source>
   <translation>Cuándo entra al agua la primera nasa</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>When hauling begins</source>
   <translation>Cuándo empieza la recogida</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>Expected, with the range that holds 8 times in 10</source>
   <translation>Lo esperado, con el margen que se cumple 8 de cada 10 veces</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>Share of crabs that will be light</source>
   <translation>Proporción de cangrejos que estarán vacíos</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>Cover</source>
   <translation>Encima</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>Least water over the top of any trap</source>
   <translation>El mínimo de agua sobre lo alto de cualquier nasa</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>Water at the haul</source>
   <translation>Agua al recoger</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>Time of the haul</source>
   <translation>Hora de recoger</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>most keepers</source>
   <translation>más de talla</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>short soak</source>
   <translation>poco en el agua</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>long drive</source>
   <translation>viaje largo</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>both of these</source>
   <translation>las dos cosas</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>{count:.1f} million</source>
   <translation>{count:.1f} millones</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>&lt; 1 in 50</source>
   <translation>&lt; 1 de 50</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>Set and haul times left out, tried by the quarter hour: {left}.</source>
   <translation>Horas de calada y recogida descartadas, probadas cada cuarto de hora: {left}.</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>Ranked plans, the next 12 weeks</source>
   <translation>Planes ordenados, las próximas 12 semanas</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>Ranked plans</source>
   <translation>Planes ordenados</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>What plans are ranked for</source>
   <translation>Para qué se ordenan los planes</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>Short soak: ranked as if each day of soak took a fifth of the keepers.
Long drive: ranked by keepers a drive, two where the haul is on another day.</source>
   <translation>Poco en el agua: ordenados como si cada día en el agua quitara una quinta parte de los de talla.
Viaje largo: ordenados por los de talla de cada viaje, dos viajes si se recoge otro día.</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>Limits are set in the place book.</source>
   <translation>Los límites se fijan en el libro de lugares.</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>any water</source>
   <translation>cualquier agua</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>rising water</source>
   <translation>agua subiendo</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>falling water</source>
   <translation>agua bajando</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>turning water</source>
   <translation>cambio de marea</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>any time</source>
   <translation>cuando sea</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>early</source>
   <translation>temprano</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>late</source>
   <translation>tarde</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>Haul on</source>
   <translation>Recoger con</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>Decides between plans that promise the same catch</source>
   <translation>Decide entre planes que prometen la misma captura</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>for</source>
   <translation>para</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>No plans are worked out yet.</source>
   <translation>Todavía no hay planes calculados.</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/plans_panel.py" />
   <source>own</source>
   <translation>suyo</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/soak_chart.py" />
   <source>{turn} {height} at {clock}</source>
   <translation>{turn} {height} a las {clock}</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/soak_chart.py" />
   <source>No turn of the tide in the soak</source>
   <translation>Ninguna pleamar ni bajamar entre la calada y la recogida</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/soak_chart.py" />
   <source>Water through the soak</source>
   <translation>El agua de la calada a la recogida</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/soak_chart.py" />
   <source>Shaded: night. Upright lines: the first trap set, and the haul begun; the tint beside them is how long that takes.
Dashed: the lowest water at which the ramp works. Diamond: least water over the shallowest trap.</source>
   <translation>Sombreado: noche. Líneas verticales: la primera nasa calada y el comienzo de la recogida; la franja a su lado es lo que se tarda.
A trazos: el agua más baja con que sirve la rampa. Rombo: el agua mínima sobre la nasa menos honda.</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/soak_chart.py" />
   <source>water, {length}</source>
   <translation>agua, {length}</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/soak_chart.py" />
   <source>least cover</source>
   <translation>mínimo encima</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/soak_chart.py" />
   <source>sunlight begins</source>
   <translation>empieza la luz del sol</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/soak_chart.py" />
   <source>sunlight ends</source>
   <translation>acaba la luz del sol</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/soak_chart.py" />
   <source>During the soak: </source>
   <translation>De la calada a la recogida: </translation>
  </message>
  <message>
   <location filename="planner/ui/dates/soak_chart.py" />
   <source>- - ramp limit</source>
   <translation>- - límite rampa</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/view.py" />
   <source>2 weeks</source>
   <translation>2 semanas</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/view.py" />
   <source>6 weeks</source>
   <translation>6 semanas</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/view.py" />
   <source>Season</source>
   <translation>Temporada</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/view.py" />
   <source>Year</source>
   <translation>Año</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/view.py" />
   <source>No place is open yet</source>
   <translation>Aún no hay ningún lugar abierto</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/view.py" />
   <source>The chosen day in words</source>
   <translation>El día elegido en palabras</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/view.py" />
   <source>Moving a plan</source>
   <translation>Mover un plan</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/view.py" />
   <source>Undo move</source>
   <translation>Deshacer</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/view.py" />
   <source>Have the plan before back  (Ctrl+Z)</source>
   <translation>Recuperar el plan anterior  (Ctrl+Z)</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/view.py" />
   <source>Today</source>
   <translation>Hoy</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/view.py" />
   <source>Choose today  (Home)</source>
   <translation>Elegir hoy  (Inicio)</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/view.py" />
   <source>Fullness from published biology alone</source>
   <translation>Llenado solo según biología publicada</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/view.py" />
   <source>Fullness learned from {trips} logged trips</source>
   <translation>Llenado aprendido de {trips} salidas anotadas</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/view.py" />
   <source>The soonest of the dates as good as any in 12 weeks. </source>
   <translation>La más próxima de las mejores fechas en 12 semanas. </translation>
  </message>
  <message>
   <location filename="planner/ui/dates/view.py" />
   <source>{ahead}{basis}; ranges hold 8 times in 10.</source>
   <translation>{ahead}{basis}; los intervalos aciertan 8 de cada 10 veces.</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/view.py" />
   <source>Days and plans</source>
   <translation>Días y planes</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/view.py" />
   <source>Show</source>
   <translation>Ver</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/view.py" />
   <source>Show {label} from just before today</source>
   <translation>Ver {label} desde poco antes de hoy</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/view.py" />
   <source>Opening the place…</source>
   <translation>Abriendo el lugar…</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/view.py" />
   <source>Pick a place at the top left, or make one in the place book.</source>
   <translation>Elija un lugar arriba a la izquierda, o cree uno en el libro de lugares.</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/view.py" />
   <source>The days are not worked out yet.</source>
   <translation>Los días aún no están calculados.</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/view.py" />
   <source>No set and haul in the next 12 weeks keeps every limit</source>
   <translation>Ninguna calada y recogida de las próximas 12 semanas cumple todos los límites</translation>
  </message>
  <message>
   <location filename="planner/ui/dates/view.py" />
   <source>Set {set_at}, haul {haul_at}, {count} full keepers</source>
   <translation>Cale el {set_at}, recoja el {haul_at}, {count} llenos de talla</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/curves_row.py" />
   <source>from {least} light crabs of 100 to {most}; the table lists them</source>
   <translation>de {least} cangrejos vacíos de 100 a {most}; la tabla los enumera</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/curves_row.py" />
   <source>When in the year</source>
   <translation>Cuándo en el año</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/curves_row.py" />
   <source>When in the moon's round</source>
   <translation>Cuándo en el ciclo de la luna</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/curves_row.py" />
   <source>Line: best estimate, all else as on average. Band: its 80% interval. The trips themselves stand under Moon and season.</source>
   <translation>Línea: mejor estimación, con todo lo demás como de promedio. Banda: su intervalo del 80 %. Las salidas mismas están en Luna y temporada.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/curves_row.py" />
   <source>Light crabs of 100 (80% interval)</source>
   <translation>Cangrejos vacíos de 100 (intervalo del 80 %)</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/effects_panel.py" />
   <source> of 100</source>
   <translation> de 100</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/effects_panel.py" />
   <source>Worth caring about, light crabs of 100</source>
   <translation>Diferencia que importa, en vacíos de cada 100</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/effects_panel.py" />
   <source>The smallest difference for which you would choose another day</source>
   <translation>La menor diferencia por la que elegiría otro día</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/effects_panel.py" />
   <source>A difference &amp;worth caring about, in light crabs</source>
   <translation>Una diferencia &amp;que importe, en cangrejos vacíos</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/effects_panel.py" />
   <source>What moves the share of light crabs</source>
   <translation>Qué influye en la proporción de vacíos</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/effects_panel.py" />
   <source>What matters</source>
   <translation>Qué influye</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/effects_panel.py" />
   <source>In words</source>
   <translation>En palabras</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/effects_panel.py" />
   <source>swing in light crabs of 100</source>
   <translation>vaivén, en vacíos de cada 100</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/effects_panel.py" />
   <source>worth caring about</source>
   <translation>diferencia que importa</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/effects_panel.py" />
   <source>From the best day to the worst</source>
   <translation>Del mejor día al peor</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/effects_panel.py" />
   <source>Dot: best estimate. Bar: its 80% interval. Dashed: worth caring about.</source>
   <translation>Punto: mejor estimación. Barra: su intervalo del 80 %. Trazos: diferencia que importa.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>Season and water</source>
   <translation>Temporada y agua</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>Moon</source>
   <translation>Luna</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>Recent trips</source>
   <translation>Salidas recientes</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>This place</source>
   <translation>Este lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>Swing</source>
   <translation>Vaivén</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>80% interval</source>
   <translation>Interv. 80 %</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>Worth caring about</source>
   <translation>Que importe</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>Trips</source>
   <translation>Salidas</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>Crabs</source>
   <translation>Cangr.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>Trip</source>
   <translation>Salida</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>Forecast</source>
   <translation>Pronóstico</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>Came</source>
   <translation>Real</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>Forecast by</source>
   <translation>Pronóstico de</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>Brier score</source>
   <translation>Índice de Brier</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>Log score</source>
   <translation>Índice log</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>in every month that you fish</source>
   <translation>en todos los meses en que usted pesca</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>spread over the whole moon</source>
   <translation>repartidas por toda la luna</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>some of them within two weeks after a light one</source>
   <translation>algunas de ellas en las dos semanas siguientes a una con muchos vacíos</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>here and at another place of yours</source>
   <translation>aquí y en otro lugar suyo</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>light crabs vary by about {points} of 100 between its best and worst days</source>
   <translation>los cangrejos vacíos varían unos {points} de cada 100 entre sus mejores y peores días</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>{trips} and {crabs}</source>
   <translation>{trips} y {crabs}</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>{name}: {verdict}. That it makes {care_points} of 100 or more: {chance}, from {basis}.</source>
   <translation>{name}: {verdict}. Que suponga {care_points} de cada 100 o más: {chance}, según {basis}.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>After about {trips}, {how}, it is as likely as not settled.</source>
   <translation>Tras unas {trips}, {how}, hay tantas posibilidades de que quede resuelto como de que no.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>{trips} forecast from earlier trips only</source>
   <translation>{trips} con pronóstico hecho solo con salidas anteriores</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>{basis}: the model {parts}.{advice}</source>
   <translation>{basis}: el modelo {parts}.{advice}</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>{name}: no judged trip yet, so this is what is known in general: {size}. Judge crabs for fullness when you haul, and your own log will speak.</source>
   <translation>{name}: aún no hay salidas examinadas, así que esto es lo que se sabe en general: {size}. Examine el llenado de los cangrejos al recoger, y hablará su propio registro.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>it matters: {size}</source>
   <translation>influye: {size}</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source> So few trips add little to what is known in general.</source>
   <translation> Tan pocas salidas añaden poco a lo que se sabe en general.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>What would settle it: more trips with crabs judged, {how}.</source>
   <translation>Para resolverlo: más salidas con cangrejos examinados, {how}.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>More than {most_trips_said} more trips, {how}, would be needed to settle it.</source>
   <translation>Harían falta más de {most_trips_said} salidas más, {how}, para resolverlo.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>almost sure</source>
   <translation>casi seguro</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>hardly possible</source>
   <translation>apenas posible</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>No past trip could be forecast from earlier ones yet. From the second judged trip on, how forecasts did stands here.</source>
   <translation>Aún no se ha podido pronosticar ninguna salida pasada a partir de otras anteriores. Desde la segunda salida con cangrejos examinados, aquí estará cuánto acertaron los pronósticos.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>the place's running average</source>
   <translation>la media acumulada del lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>the season alone</source>
   <translation>solo la temporada</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>{basis}: too few to say which forecast is better.</source>
   <translation>{basis}: demasiado pocas para decir qué pronóstico es mejor.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source> Do not lean on it more than on those.</source>
   <translation> No se fíe de él más que de esos.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>{value:.3f}</source>
   <translation>{value:.3f}</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>{mean:.0f} of 100</source>
   <translation>{mean:.0f} de 100</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>most likely not worth caring about: {size}</source>
   <translation>lo más probable es que no importe: {size}</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>your log cannot tell yet. Best estimate: {size}</source>
   <translation>su registro aún no permite saberlo. Mejor estimación: {size}</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>judged crab</source>
   <translation>cangrejo examinado</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>judged crabs</source>
   <translation>cangrejos examinados</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>more trip</source>
   <translation>salida más</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>more trips</source>
   <translation>salidas más</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>past trip</source>
   <translation>salida pasada</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>past trips</source>
   <translation>salidas pasadas</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>{forecast:.0%}</source>
   <translation>{forecast:.0%}</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>{light:.0%}</source>
   <translation>{light:.0%}</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>did better than</source>
   <translation>acertó más que</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>did no better than</source>
   <translation>no acertó más que</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>did worse than</source>
   <translation>acertó menos que</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>this model</source>
   <translation>este modelo</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/evidence_rows.py" />
   <source>the running average</source>
   <translation>la media acumulada</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/record_panel.py" />
   <source>Forecast against outcome</source>
   <translation>Pronóstico frente a resultado</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/record_panel.py" />
   <source>light crabs of 100, as forecast</source>
   <translation>cangrejos vacíos de cada 100, según el pronóstico</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/record_panel.py" />
   <source>light crabs of 100, as they came</source>
   <translation>cangrejos vacíos de cada 100, según resultó</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/record_panel.py" />
   <source>{trips} past trips{words}; the tables list them</source>
   <translation>{trips} salidas pasadas{words}; las tablas las enumeran</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/record_panel.py" />
   <source>Scores of the forecasts</source>
   <translation>Puntuación de los pronósticos</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/record_panel.py" />
   <source>How forecasts did</source>
   <translation>Acierto del pronóstico</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/record_panel.py" />
   <source>Trips of like forecasts together</source>
   <translation>Salidas de pronóstico parecido, juntas</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/record_panel.py" />
   <source>Both scores measure how far forecasts were off, as a mean over judged crabs: smaller is better, 0 would be right every time. Each past trip was forecast from earlier trips only.</source>
   <translation>Las dos puntuaciones miden cuánto erraron los pronósticos, como media sobre los cangrejos examinados: menos es mejor, 0 sería acertar siempre. Cada salida pasada se pronosticó solo a partir de salidas anteriores.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/record_panel.py" />
   <source>Past forecasts</source>
   <translation>Pronósticos pasados</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/record_panel.py" />
   <source>On the dashed line forecast and outcome are equal. Discs: trips, larger with more crabs judged, and the forecast's 80% interval. Squares: trips of like forecasts together, and the 80% interval of what came; forecasts can be relied on where those reach the dashed line.</source>
   <translation>En la línea de trazos, pronóstico y resultado son iguales. Discos: salidas, mayores cuantos más cangrejos examinados, y el intervalo del 80 % del pronóstico. Cuadrados: salidas de pronóstico parecido, juntas, y el intervalo del 80 % de lo que resultó; se puede confiar en los pronósticos allí donde esos intervalos alcanzan la línea de trazos.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/record_panel.py" />
   <source>, in {groups} groups</source>
   <translation>, en {groups} grupos</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/row_chart.py" />
   <source>{name}: {mean}, 80% interval {range}</source>
   <translation>{name}: {mean}, intervalo del 80 %: {range}</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/row_chart.py" />
   <source>{name}: nothing known</source>
   <translation>{name}: no se sabe nada</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/row_chart.py" />
   <source>{count} more, to {beyond:g} →</source>
   <translation>{count} más, hasta {beyond:g} →</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_panel.py" />
   <source>What differs somewhere in the log. Entrances and colour are read from the trap's design, such as "red wire, 4 doors", or from a column of that name in an imported table</source>
   <translation>Lo que difiere en alguna parte del registro. Las entradas y el color se leen en el modelo de la nasa, escrito en inglés, como "red wire, 4 doors", o en una columna de ese nombre en una tabla importada</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_panel.py" />
   <source>No two kinds of anything are logged yet: give your traps a design, a bait or a spot.</source>
   <translation>Todavía no hay nada de dos clases en el registro: dé a sus nasas un modelo, un cebo o un puesto.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_panel.py" />
   <source>Table (*.csv)</source>
   <translation>Tabla (*.csv)</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_panel.py" />
   <source>Picture (*.png)</source>
   <translation>Imagen (*.png)</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_panel.py" />
   <source>traps by {by}.csv</source>
   <translation>nasas por {by}.csv</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_panel.py" />
   <source> times</source>
   <translation> veces</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_panel.py" />
   <source>How many times as much a trap must take to be worth its price</source>
   <translation>Cuántas veces más tiene que pescar una nasa para valer lo que cuesta</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_panel.py" />
   <source>This place only</source>
   <translation>Solo este lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_panel.py" />
   <source>Export…</source>
   <translation>Exportar…</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_panel.py" />
   <source>The comparison as a table (CSV) or as a picture (PNG)</source>
   <translation>La comparación como tabla (CSV) o como imagen (PNG)</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_panel.py" />
   <source>Rates of each group</source>
   <translation>Lo que da cada grupo</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_panel.py" />
   <source>Traps compared</source>
   <translation>Nasas comparadas</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_panel.py" />
   <source>Comparing traps</source>
   <translation>Comparando las nasas</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_panel.py" />
   <source>Comparing…</source>
   <translation>Comparando…</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_panel.py" />
   <source>Export the comparison</source>
   <translation>Exportar la comparación</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_panel.py" />
   <source>Writing the comparison</source>
   <translation>Escribiendo la comparación</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_panel.py" />
   <source>What would settle it</source>
   <translation>Qué lo resolvería</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_panel.py" />
   <source>Next trip: which trap goes where</source>
   <translation>Próxima salida: qué nasa va en qué sitio</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_panel.py" />
   <source>Picture of the comparison written to {out}.</source>
   <translation>Imagen de la comparación escrita en {out}.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_panel.py" />
   <source>{out} cannot be written; choose another folder.</source>
   <translation>No se puede escribir {out}; elija otra carpeta.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_panel.py" />
   <source>Comparison written to {out}.</source>
   <translation>Comparación escrita en {out}.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_panel.py" />
   <source>Compare &amp;by</source>
   <translation>Comparar &amp;por</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_panel.py" />
   <source>Co&amp;unt</source>
   <translation>Con&amp;tar</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_panel.py" />
   <source>&amp;Worth knowing</source>
   <translation>&amp;Importa desde</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_rows.py" />
   <source>all crabs</source>
   <translation>todos los cangrejos</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_rows.py" />
   <source>shorts (fewest is best)</source>
   <translation>pequeños (mejor cuantos menos)</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_rows.py" />
   <source>females (fewest is best)</source>
   <translation>hembras (mejor cuantas menos)</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_rows.py" />
   <source>bycatch (fewest is best)</source>
   <translation>otras especies (mejor cuantas menos)</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_rows.py" />
   <source>share of light crabs (fewest is best)</source>
   <translation>proporción de vacíos (mejor cuanto menor)</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_rows.py" />
   <source>keepers a haul</source>
   <translation>de talla por recogida</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_rows.py" />
   <source>crabs a haul</source>
   <translation>cangrejos por recogida</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_rows.py" />
   <source>shorts a haul</source>
   <translation>pequeños por recogida</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_rows.py" />
   <source>females a haul</source>
   <translation>hembras por recogida</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_rows.py" />
   <source>other animals a haul</source>
   <translation>otros animales por recogida</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_rows.py" />
   <source>light crabs of 100 judged</source>
   <translation>vacíos de cada 100 examinados</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_rows.py" />
   <source>Total</source>
   <translation>Total</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_rows.py" />
   <source>A haul</source>
   <translation>Por recog.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_rows.py" />
   <source>Best one</source>
   <translation>El mejor</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_rows.py" />
   <source>Dot: what a haul gives, brought to the same trips, the same spots{soak}; the fewer hauls, the more it leans on the other groups. Bar: its 80% interval. Faint rings: {rings}.</source>
   <translation>Punto: lo que da una recogida, llevado a las mismas salidas, los mismos puestos{soak}; cuantas menos recogidas, más se apoya en los otros grupos. Barra: su intervalo del 80 %. Anillos tenues: {rings}.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_rows.py" />
   <source>some of the hauls as counted, evenly chosen</source>
   <translation>algunas de las recogidas tal como se contaron, elegidas por igual</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_rows.py" />
   <source>single hauls as counted</source>
   <translation>recogidas una a una, tal como se contaron</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_rows.py" />
   <source> and a soak of {common_soak_h:.0f} h</source>
   <translation> y un tiempo en el agua de {common_soak_h:.0f} h</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_rows.py" />
   <source>almost surely</source>
   <translation>casi seguro</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_rows.py" />
   <source>hardly</source>
   <translation>improbable</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_rows.py" />
   <source>not counted</source>
   <translation>sin contar</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_rows.py" />
   <source>{p} in 10</source>
   <translation>{p} de cada 10</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trial_rows.py" />
   <source>1 in 20</source>
   <translation>1 de 20</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trip_chart.py" />
   <source>{trips} judged trips; the table lists them</source>
   <translation>{trips} salidas con examinados; la tabla las enumera</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trip_points.py" />
   <source>full</source>
   <comment>of a trip</comment>
   <translation>llena</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trip_points.py" />
   <source>mixed</source>
   <comment>of a trip</comment>
   <translation>mixta</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trip_points.py" />
   <source>light</source>
   <comment>of a trip</comment>
   <translation>vacía</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trip_points.py" />
   <source>not judged</source>
   <translation>sin examinar</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trip_points.py" />
   <source>{days} d before {moon}</source>
   <translation>{days} d antes de {moon}</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trip_points.py" />
   <source>{name}, {moon_words}: {light} of {judged} light, {share}</source>
   <translation>{name}, {moon_words}: {light} de {judged} vacíos, {share}</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trip_points.py" />
   <source>{days} d after {moon}</source>
   <translation>{days} d después de {moon}</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trip_points.py" />
   <source>{mean} of {judged}</source>
   <translation>{mean} de {judged}</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trips_panel.py" />
   <source>the model</source>
   <translation>el modelo</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trips_panel.py" />
   <source>Filled marks: full trips. Open: light ones. Half filled: mixed. Larger: more crabs judged. Lines: 80% interval of the trip's own count.</source>
   <translation>Marcas llenas: salidas llenas. Abiertas: vacías. Medio llenas: mixtas. Más grandes: más cangrejos examinados. Líneas: intervalo del 80 % del recuento propio de la salida.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trips_panel.py" />
   <source>Band: 80% interval of what the model makes of the log, all else as on average.</source>
   <translation>Banda: intervalo del 80 % de lo que el modelo saca del registro, con todo lo demás en su media.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trips_panel.py" />
   <source>Share (80% interval)</source>
   <translation>Proporción (80 %)</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trips_panel.py" />
   <source>Kind</source>
   <translation>Tipo</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trips_panel.py" />
   <source>{judged} trips with judged crabs; {unjudged} without, which say nothing of fullness.</source>
   <translation>{judged} salidas con cangrejos examinados; {unjudged} sin ellos, que nada dicen del llenado.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trips_panel.py" />
   <source>{judged} trips with judged crabs.</source>
   <translation>{judged} salidas con cangrejos examinados.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trips_panel.py" />
   <source>Trips over the moon</source>
   <translation>Salidas según la luna</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trips_panel.py" />
   <source>Trips over the year</source>
   <translation>Salidas a lo largo del año</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trips_panel.py" />
   <source>Moon and season</source>
   <translation>Luna y temporada</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trips_panel.py" />
   <source>Judged trips, {heading}</source>
   <translation>Salidas con examinados, {heading}</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trips_panel.py" />
   <source>Placing the trips</source>
   <translation>Situando las salidas</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trips_panel.py" />
   <source>Over the moon</source>
   <translation>Según la luna</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/trips_panel.py" />
   <source>Over the year</source>
   <translation>A lo largo del año</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/view.py" />
   <source>What your own trips say will stand here: whether moon, season or recent trips move how full the crabs are, how forecasts did, and which traps catch more. Nothing is logged yet.</source>
   <translation>Aquí estará lo que dicen sus propias salidas: si la luna, la temporada o las salidas recientes influyen en lo llenos que están los cangrejos, cuánto acertaron los pronósticos y qué nasas capturan más. Aún no hay nada anotado.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/view.py" />
   <source>No trip logged here says yet how full its crabs were. Judge a few crabs of every haul and enter how many were light: then what moves that, and how forecasts did, stands here.</source>
   <translation>Ninguna salida anotada aquí dice aún lo llenos que estaban sus cangrejos. Examine unos cuantos cangrejos de cada recogida y anote cuántos estaban vacíos: entonces aquí estará qué influye en ello y cuánto acertaron los pronósticos.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/view.py" />
   <source>Kinds of evidence</source>
   <translation>Tipos de indicios</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/view.py" />
   <source>Log hauls</source>
   <translation>Anotar recogidas</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/view.py" />
   <source>Learning from the log</source>
   <translation>Aprendiendo del registro</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/view.py" />
   <source>Weigh evidence</source>
   <translation>Sopesar indicios</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/view.py" />
   <source>{name}: {trips}, {crabs} judged for fullness.</source>
   <translation>{name}: {trips}, {crabs} con el llenado examinado.</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/view.py" />
   <source>Opening the log…</source>
   <translation>Abriendo el registro…</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/view.py" />
   <source>Learning from the log…</source>
   <translation>Aprendiendo del registro…</translation>
  </message>
  <message>
   <location filename="planner/ui/evidence/view.py" />
   <source>crab</source>
   <translation>cangrejo</translation>
  </message>
  <message>
   <location filename="planner/ui/guide/help_page.py" />
   <source>Page of the guide</source>
   <translation>Página de la guía</translation>
  </message>
  <message>
   <location filename="planner/ui/guide/help_window.py" />
   <source>Guide - Fullshell</source>
   <translation>Guía - Fullshell</translation>
  </message>
  <message>
   <location filename="planner/ui/guide/help_window.py" />
   <source>Message</source>
   <translation>Mensaje</translation>
  </message>
  <message>
   <location filename="planner/ui/guide/help_window.py" />
   <source>Find in the guide</source>
   <translation>Buscar en la guía</translation>
  </message>
  <message>
   <location filename="planner/ui/guide/help_window.py" />
   <source>Back</source>
   <translation>Atrás</translation>
  </message>
  <message>
   <location filename="planner/ui/guide/help_window.py" />
   <source>The page before (Alt+Left)</source>
   <translation>La página anterior (Alt+Izquierda)</translation>
  </message>
  <message>
   <location filename="planner/ui/guide/help_window.py" />
   <source>Forward</source>
   <translation>Adelante</translation>
  </message>
  <message>
   <location filename="planner/ui/guide/help_window.py" />
   <source>The page after it (Alt+Right)</source>
   <translation>La página siguiente (Alt+Derecha)</translation>
  </message>
  <message>
   <location filename="planner/ui/guide/help_window.py" />
   <source>Contents</source>
   <translation>Contenido</translation>
  </message>
  <message>
   <location filename="planner/ui/guide/help_window.py" />
   <source>The first page</source>
   <translation>La primera página</translation>
  </message>
  <message>
   <location filename="planner/ui/guide/help_window.py" />
   <source>Find next</source>
   <translation>Siguiente</translation>
  </message>
  <message>
   <location filename="planner/ui/guide/help_window.py" />
   <source>Further down, or on (F3)</source>
   <translation>Más abajo, o continuar (F3)</translation>
  </message>
  <message>
   <location filename="planner/ui/guide/help_window.py" />
   <source>Find previous</source>
   <translation>Anterior</translation>
  </message>
  <message>
   <location filename="planner/ui/guide/help_window.py" />
   <source>Further up (Shift+F3)</source>
   <translation>Más arriba (Mayús+F3)</translation>
  </message>
  <message>
   <location filename="planner/ui/guide/help_window.py" />
   <source>Contents of the guide</source>
   <translation>Contenido de la guía</translation>
  </message>
  <message>
   <location filename="planner/ui/guide/help_window.py" />
   <source>{address} is outside the guide; Fullshell opens nothing there.</source>
   <translation>{address} está fuera de la guía; Fullshell no abre nada allí.</translation>
  </message>
  <message>
   <location filename="planner/ui/guide/help_window.py" />
   <source>“{words}” is nowhere in the guide.</source>
   <translation>«{words}» no aparece en la guía.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/backups_dialog.py" />
   <source>Backups of the log</source>
   <translation>Copias de seguridad del registro</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/backups_dialog.py" />
   <source>Backups of the log, newest first</source>
   <translation>Copias de seguridad del registro, la más reciente primero</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/backups_dialog.py" />
   <source>Go back to this one</source>
   <translation>Volver a esta copia</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/backups_dialog.py" />
   <source>Today's log is backed up first</source>
   <translation>Antes se guarda una copia del registro de hoy</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/backups_dialog.py" />
   <source>Another file…</source>
   <translation>Otro archivo…</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/backups_dialog.py" />
   <source>A backup that you keep elsewhere</source>
   <translation>Una copia de seguridad que guarda en otra parte</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/backups_dialog.py" />
   <source>A backup is made on each day of use, and before anything that changes the whole log. Going back first makes a backup of the log as it is now, so that you can return. They are in {backup_folder}: copy that folder elsewhere now and then.</source>
   <translation>Se hace una copia de seguridad cada día de uso y antes de todo lo que cambie el registro entero. Al volver atrás se copia primero el registro tal como está ahora, para que pueda regresar a él. Están en {backup_folder}: de vez en cuando, copie esa carpeta en otra parte.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/backups_dialog.py" />
   <source>Go back to a backup</source>
   <translation>Volver a una copia de seguridad</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/backups_dialog.py" />
   <source>Logs (*.logbook)</source>
   <translation>Registros (*.logbook)</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/backups_dialog.py" />
   <source>Made</source>
   <translation>Hecha</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/backups_dialog.py" />
   <source>Why</source>
   <translation>Motivo</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/backups_dialog.py" />
   <source>Size</source>
   <translation>Tamaño</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/backups_dialog.py" />
   <source>No backup yet. The first is made on the next day of use.</source>
   <translation>Aún no hay copias. La primera se hace el próximo día de uso.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/backups_dialog.py" />
   <source>This log is shown from a file that Fullshell does not change.</source>
   <translation>Este registro se muestra desde un archivo que Fullshell no modifica.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/backups_dialog.py" />
   <source>The log is again what the backup holds. What it was until now is the newest backup, should you want it back.</source>
   <translation>El registro vuelve a ser lo que contiene la copia de seguridad. Lo que era hasta ahora es la copia más reciente, por si quiere recuperarlo.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/backups_dialog.py" />
   <source>{size:.1f} MB</source>
   <translation>{size:.1f} MB</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/backups_dialog.py" />
   <source>day of use</source>
   <translation>día de uso</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/bin_dialog.py" />
   <source>The bin is empty. Deleted trips and traps would wait here until you empty it.</source>
   <translation>La papelera está vacía. Las salidas y nasas borradas esperarían aquí hasta que la vacíe.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/bin_dialog.py" />
   <source>Bin of the log</source>
   <translation>Papelera del registro</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/bin_dialog.py" />
   <source>Deleted trips and hauls, newest first</source>
   <translation>Salidas y recogidas borradas, lo más reciente primero</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/bin_dialog.py" />
   <source>Deleted trips and traps wait here, with all they held, until you empty the bin.</source>
   <translation>Las salidas y nasas borradas esperan aquí, con todo lo que contenían, hasta que vacíe la papelera.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/bin_dialog.py" />
   <source>Put back</source>
   <translation>Devolver</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/bin_dialog.py" />
   <source>Back into the log, with all it held</source>
   <translation>De vuelta al registro, con todo lo que contenía</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/bin_dialog.py" />
   <source>Empty the bin…</source>
   <translation>Vaciar papelera…</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/bin_dialog.py" />
   <source>Empty the bin</source>
   <translation>Vaciar la papelera</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/bin_dialog.py" />
   <source>Let go of {entries} for good?</source>
   <translation>¿Borrar {entries} para siempre?</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/bin_dialog.py" />
   <source>Deleted</source>
   <translation>Borrado</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/bin_dialog.py" />
   <source>deleted entry</source>
   <translation>entrada borrada</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/bin_dialog.py" />
   <source>deleted entries</source>
   <translation>entradas borradas</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/crab_cells.py" />
   <source>Sex</source>
   <translation>Sexo</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/crab_cells.py" />
   <source>Width (mm)</source>
   <translation>Ancho (mm)</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/crab_cells.py" />
   <source>Measured</source>
   <translation>Medido</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/crab_cells.py" />
   <source>Weight (g)</source>
   <translation>Peso (g)</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/crab_cells.py" />
   <source>Shell</source>
   <translation>Cáscara</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/crab_cells.py" />
   <source>Peeler sign</source>
   <translation>Señal de muda</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/crab_cells.py" />
   <source>Abdomen</source>
   <translation>Abdomen</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/crab_cells.py" />
   <source>Fullness</source>
   <translation>Llenado</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/crab_cells.py" />
   <source>Picked meat (g)</source>
   <translation>Carne pelada (g)</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/crab_cells.py" />
   <source>Notes</source>
   <translation>Notas</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/crab_cells.py" />
   <source>is not one of the words</source>
   <translation>no es una de las palabras</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/crab_cells.py" />
   <source>write {words}</source>
   <translation>escriba {words}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/crab_cells.py" />
   <source>write digits, such as 142</source>
   <translation>escriba cifras, como 142</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/crabs_dialog.py" />
   <source>Single crabs, one row each</source>
   <translation>Cangrejos uno a uno, una fila para cada uno</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/crabs_dialog.py" />
   <source>Why a cell was not saved</source>
   <translation>Por qué no se guardó una celda</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/crabs_dialog.py" />
   <source>Whatever you looked at; the rest stays empty. Words may be cut short: pap for papershell. An empty row at the end takes the next crab; Ctrl+Delete takes one out. Where the trap has no count of judged crabs, those graded here are counted.</source>
   <translation>Lo que haya mirado; el resto queda vacío. Las palabras se pueden abreviar: pap por papershell. La fila vacía del final espera al siguiente cangrejo; Ctrl+Supr quita uno. Si la nasa no tiene recuento de examinados, se cuentan los cangrejos clasificados aquí.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/crabs_dialog.py" />
   <source>{heading} of crab {row}: {given}</source>
   <translation>{heading} del cangrejo {row}: {given}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/crabs_dialog.py" />
   <source>Single crabs of trap {trap}</source>
   <translation>Cangrejos uno a uno de la nasa {trap}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/crabs_dialog.py" />
   <source>Single crabs</source>
   <translation>Cangrejos uno a uno</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/crabs_dialog.py" />
   <source>removal of a crab</source>
   <translation>retirada de un cangrejo</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/crabs_dialog.py" />
   <source>{split} of crab {row}</source>
   <translation>{split} del cangrejo {row}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/crabs_dialog.py" />
   <source>Not saved. {value} {what}: {remedy}.</source>
   <translation>No se guardó. {value} {what}: {remedy}.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>Not saved. {problem}.</source>
   <translation>No se guardó. {problem}.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>The trap's label</source>
   <translation>La etiqueta de la nasa</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>Spot</source>
   <translation>Puesto</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>Where it stood</source>
   <translation>Dónde estaba</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>When it went in; + and − move it by five minutes</source>
   <translation>Cuándo se caló; + y − la mueven cinco minutos</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>When it came up; + and − move it by five minutes</source>
   <translation>Cuándo se recogió; + y − la mueven cinco minutos</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>Legal crabs</source>
   <translation>Cangrejos de talla legal</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>Undersize crabs, freed</source>
   <translation>Cangrejos por debajo de la talla, liberados</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>Every female</source>
   <translation>Todas las hembras</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>Sponge</source>
   <translation>Huevos</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>Those of the females with eggs</source>
   <translation>De las hembras, las que llevan huevos</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>Legal crabs looked at for fullness</source>
   <translation>Cangrejos de talla legal a los que se miró el llenado</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>Those of the judged that were light</source>
   <translation>De los examinados, los que estaban vacíos</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>Design</source>
   <translation>Modelo</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>The kind of trap</source>
   <translation>El tipo de nasa</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>Bait</source>
   <translation>Cebo</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>What it was baited with</source>
   <translation>Con qué se cebó</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>Depth</source>
   <translation>Prof.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>Depth of water where it stood</source>
   <translation>Profundidad del agua donde estaba</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>Other kinds</source>
   <translation>Otras especies</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>Other species, as you would write them</source>
   <translation>Otras especies, como usted las escribiría</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>Anything else</source>
   <translation>Cualquier otra cosa</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>{local.day} {local:%b} {clock}</source>
   <translation>{local.day} {local:%b} {clock}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>Trap {trap}, </source>
   <translation>Nasa {trap}, </translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>write the clock with a colon, such as 20:26</source>
   <translation>escriba la hora con dos puntos, como 20:26</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>may end in a year</source>
   <translation>puede terminar en un año</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>is no date</source>
   <translation>no es una fecha</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>write it as day, month and clock, such as 22 Nov 7:40</source>
   <translation>escríbala como día, mes y hora, por ejemplo 22 nov 7:40</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_cells.py" />
   <source>write a clock such as 7:40 pm or 19:40</source>
   <translation>escriba una hora como 7:40 pm o 19:40</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_model.py" />
   <source>{heading} of trap {trap}: {given}</source>
   <translation>{heading} de la nasa {trap}: {given}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_model.py" />
   <source>{what} of {words}</source>
   <translation>{what} de {words}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_model.py" />
   <source>{cells} cells</source>
   <translation>{cells} celdas</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_model.py" />
   <source>Not pasted. From here the table has no room for {height} by {width} cells: add traps first, or choose another cell.</source>
   <translation>No se pegó. Desde aquí la tabla no tiene sitio para {height} por {width} celdas: añada antes nasas o elija otra celda.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_model.py" />
   <source>trap {pop}</source>
   <translation>la nasa {pop}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_model.py" />
   <source>{traps} traps</source>
   <translation>{traps} nasas</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_rows.py" />
   <source>No time above to start from: type one, such as 7:40.</source>
   <translation>Arriba no hay ninguna hora de la que partir: escriba una, como 7:40.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_rows.py" />
   <source>Not saved. Trap {trap} would come up before it went in.</source>
   <translation>No se guardó. La nasa {trap} se recogería antes de calarse.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_table.py" />
   <source>Tab: next cell. Enter: next trap. Digits: type. + and −: five minutes. Delete: not recorded. Ctrl+D: as the trap above. Ctrl+Enter: add a trap. Ctrl+K: single crabs. Ctrl+C and Ctrl+V: cells to and from a spreadsheet. Ctrl+Tab: leave the table.</source>
   <translation>Tab: celda siguiente. Intro: nasa siguiente. Cifras: escribir. + y −: cinco minutos. Supr: no anotado. Ctrl+D: como la nasa de arriba. Ctrl+Intro: añadir una nasa. Ctrl+K: cangrejos uno a uno. Ctrl+C y Ctrl+V: celdas hacia y desde una hoja de cálculo. Ctrl+Tab: salir de la tabla.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_table.py" />
   <source>Hauls of the trip, one row a trap</source>
   <translation>Recogidas de la salida, una fila por nasa</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_words.py" />
   <source>The plan forecast {keepers} full keepers; light crabs {light}.</source>
   <translation>El plan pronosticó {keepers} llenos de talla; cangrejos vacíos: {light}.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_words.py" />
   <source>{traps}, nothing counted yet</source>
   <translation>{traps}, aún nada contado</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_words.py" />
   <source>Not recorded yet: {parts}.</source>
   <translation>Aún sin anotar: {parts}.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_words.py" />
   <source>every trap</source>
   <translation>todas las nasas</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_words.py" />
   <source>{hauls:,} hauls</source>
   <translation>{hauls:,} recogidas</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_words.py" />
   <source>{keepers} keepers</source>
   <translation>{keepers} de talla</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_words.py" />
   <source>{shorts} shorts</source>
   <translation>{shorts} pequeños</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_words.py" />
   <source> ({sponge} sponge)</source>
   <translation> ({sponge} con huevos)</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_words.py" />
   <source>{females} females{sponge}</source>
   <translation>{females} hembras{sponge}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_words.py" />
   <source>{judged} judged, {lights} light{share}</source>
   <translation>{judged} examinados, {lights} vacíos{share}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_words.py" />
   <source>in the kitchen {kitchen_picked} picked, {light} light</source>
   <translation>en la cocina {kitchen_picked} pelados, {light} vacíos</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_words.py" />
   <source>{picked} crabs were picked in the kitchen, but {keepers} were kept. Is that right?</source>
   <translation>En la cocina se pelaron {picked} cangrejos, pero se guardaron {keepers}. ¿Es correcto?</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_words.py" />
   <source>Trap {named}: {what}. Are the dates right?</source>
   <translation>Nasa {named}: {what}. ¿Están bien las fechas?</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_words.py" />
   <source>{keepers:,} keepers</source>
   <translation>{keepers:,} de talla</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_words.py" />
   <source>{crabs:,} judged, light {light_words}</source>
   <translation>{crabs:,} examinados, vacíos: {light_words}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_words.py" />
   <source>row {number}</source>
   <translation>fila {number}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_words.py" />
   <source>{heading} of {named}</source>
   <translation>{heading} ({named})</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_words.py" />
   <source>Trap {trap} is there {count} times with the same haul time.</source>
   <translation>La nasa {trap} está {count} veces con la misma hora de recogida.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_words.py" />
   <source>Crabs are counted for a haul that lies ahead. Are the dates right?</source>
   <translation>Hay cangrejos contados de una recogida que aún no ha llegado. ¿Están bien las fechas?</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_words.py" />
   <source>The times are the plan's and still lie ahead: correct them as you set and haul.</source>
   <translation>Las horas son las del plan y aún no han llegado: corríjalas al calar y al recoger.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_words.py" />
   <source>Trap {trap}: {count} {kind} in one trap. Is that right?</source>
   <translation>Nasa {trap}: {count} {kind} en una sola nasa. ¿Es correcto?</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_words.py" />
   <source>a soak of {days:.0f} days</source>
   <translation>{days:.0f} días en el agua</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/haul_words.py" />
   <source>a soak of {minutes} minutes</source>
   <translation>{minutes} minutos en el agua</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>3/4 is 3 April</source>
   <translation>3/4 es 3 de abril</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>3/4 is 4 March</source>
   <translation>3/4 es 4 de marzo</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>Celsius</source>
   <translation>Celsius</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>Fahrenheit</source>
   <translation>Fahrenheit</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>as they seem</source>
   <translation>como parezcan</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>Windows</source>
   <translation>Windows</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>old Mac</source>
   <translation>Mac antiguo</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>Import a table</source>
   <translation>Importar una tabla</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>Columns of the table, and what they mean</source>
   <translation>Columnas de la tabla, y qué significan</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>Where a row names no place</source>
   <translation>Donde una fila no nombra lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>Such as 7:30, for rows that have only a date</source>
   <translation>Como 7:30, para filas que solo tienen fecha</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>Such as 17:00, for rows that have only a date</source>
   <translation>Como 17:00, para filas que solo tienen fecha</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>Every problem of the table</source>
   <translation>Todos los problemas de la tabla</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>Take nothing</source>
   <translation>No importar</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>The log stays as it is</source>
   <translation>El registro queda como está</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>{name} is kept as it is: another column has its meaning now.</source>
   <translation>{name} se guarda tal cual: otra columna tiene ahora su significado.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>⚠ {problems} of its lines cannot be taken. Nothing is in the log yet: mend the table and import it again, or take the others alone.</source>
   <translation>⚠ {problems} de sus líneas no se pueden importar. Aún no hay nada en el registro: corrija la tabla e impórtela otra vez, o importe solo las demás.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>In the table</source>
   <translation>En la tabla</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>First values</source>
   <translation>Primeros valores</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>Means</source>
   <translation>Significa</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>Place</source>
   <translation>Lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>Day and month</source>
   <translation>Día y mes</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>Usual time of hauling</source>
   <translation>Hora habitual de recoger</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>Usual time of setting</source>
   <translation>Hora habitual de calar</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>Depths are in</source>
   <translation>Profundidad en</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>Water is in</source>
   <translation>Agua en</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>Letters are those of</source>
   <translation>Las letras son de</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_dialog.py" />
   <source>What {name} means</source>
   <translation>Qué significa {name}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_text.py" />
   <source>At which place was this? Fill it in above.</source>
   <translation>¿En qué lugar fue? Escríbalo arriba.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_text.py" />
   <source>Dates such as 3/4 can mean two days, and these rows do not tell which: choose above.</source>
   <translation>Las fechas como 3/4 pueden ser dos días distintos, y estas filas no dicen cuál: elija arriba.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_text.py" />
   <source>Some rows have a date without a time of day: give the usual one above.</source>
   <translation>Algunas filas tienen fecha sin hora del día: indique arriba la habitual.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_text.py" />
   <source>{source}: {made_of}, {many} below the heading.</source>
   <translation>{source}: {made_of}, {many} bajo el encabezado.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_text.py" />
   <source>Take in {hauls}</source>
   <translation>Importar {hauls}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_text.py" />
   <source>{source}: {parts}. Undo in the Edit menu takes them out again.</source>
   <translation>{source}: {parts}. Deshacer, en el menú Editar, lo quita otra vez.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_text.py" />
   <source>{source}: nothing added; every haul in it is in the log already.</source>
   <translation>{source}: nada añadido; todas sus recogidas están ya en el registro.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_text.py" />
   <source>row</source>
   <translation>fila</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_text.py" />
   <source>rows</source>
   <translation>filas</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_text.py" />
   <source>line</source>
   <translation>línea</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_text.py" />
   <source>lines</source>
   <translation>líneas</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_text.py" />
   <source>new haul</source>
   <translation>recogida nueva</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_text.py" />
   <source>new hauls</source>
   <translation>recogidas nuevas</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_text.py" />
   <source>{rows} filled where nothing was recorded</source>
   <translation>{rows} completadas donde no había nada anotado</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_text.py" />
   <source>{known} in the log already</source>
   <translation>{known} ya en el registro</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_text.py" />
   <source>{hauls} of traps that stand in the same trip with other values; both will stand</source>
   <translation>{hauls} de nasas que ya están en la misma salida con otros valores; quedarán ambas</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_text.py" />
   <source>and {problems} more</source>
   <translation>y {problems} más</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_text.py" />
   <source>{hauls} added</source>
   <translation>{hauls} más en el registro</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_text.py" />
   <source>{rows} filled</source>
   <translation>{rows} con los recuentos al día</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_text.py" />
   <source>good haul</source>
   <translation>recogida válida</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/intake_text.py" />
   <source>good hauls</source>
   <translation>recogidas válidas</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/kitchen_ask.py" />
   <source>Save</source>
   <translation>Guardar</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/kitchen_ask.py" />
   <source>Not counted</source>
   <translation>Sin recuento</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/kitchen_ask.py" />
   <source>You can fill it in later, in Log hauls</source>
   <translation>Puede rellenarlo más tarde, en Anotar recogidas</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/kitchen_ask.py" />
   <source>Crabs picked</source>
   <translation>Cangrejos pelados</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/kitchen_ask.py" />
   <source>Light ones of those</source>
   <translation>De ellos, vacíos</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/kitchen_ask.py" />
   <source>picked</source>
   <translation>pelados</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/kitchen_ask.py" />
   <source>How were the crabs of trip {name} in the kitchen? The count teaches the forecast; leave it out when nobody counted.</source>
   <translation>¿Cómo estaban en la cocina los cangrejos de la salida {name}? El recuento enseña al pronóstico; déjelo si nadie contó.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/kitchen_ask.py" />
   <source>⚠ Not saved. Light {what}.</source>
   <translation>⚠ No se guardó. Vacíos: {what}.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/kitchen_ask.py" />
   <source>⚠ Not saved. The count {what}; {remedy}.</source>
   <translation>⚠ No se guardó. El recuento {what}; {remedy}.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/kitchen_ask.py" />
   <source>kitchen count of trip {name}</source>
   <translation>recuento en la cocina de la salida {name}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_files.py" />
   <source>Tables and logs (*.csv *.txt *.tsv *.xlsx *.logbook);;All files (*)</source>
   <translation>Tablas y registros (*.csv *.txt *.tsv *.xlsx *.logbook);;Todos los archivos (*)</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_files.py" />
   <source>Haul table (*.csv);;Workbook (*.xlsx);;Whole log to keep or carry (*.logbook)</source>
   <translation>Tabla de recogidas (*.csv);;Libro de cálculo (*.xlsx);;Registro entero para guardar o llevar (*.logbook)</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_files.py" />
   <source>Import…</source>
   <translation>Importar…</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_files.py" />
   <source>A table (CSV or XLSX) of any make</source>
   <translation>Una tabla (CSV o XLSX) de cualquier forma</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_files.py" />
   <source>Paste</source>
   <translation>Pegar</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_files.py" />
   <source>Take in the text that the tally page gave</source>
   <translation>Tomar el texto que dio la página de recuento</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_files.py" />
   <source>CSV, XLSX, or all in one file</source>
   <translation>CSV, XLSX o todo en un archivo</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_files.py" />
   <source>Reading the table</source>
   <translation>Leyendo la tabla</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_files.py" />
   <source>Reading the log</source>
   <translation>Leyendo el registro</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_files.py" />
   <source>Export the log</source>
   <translation>Exportar el registro</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_files.py" />
   <source>Writing the log</source>
   <translation>Escribiendo el registro</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_files.py" />
   <source>pasted text</source>
   <translation>texto pegado</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_files.py" />
   <source>import of {source}</source>
   <translation>importación de {source}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_files.py" />
   <source>The log is what {name} holds.</source>
   <translation>El registro es ahora lo que contiene {name}.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_files.py" />
   <source>{source} is taken in. Undo in the Edit menu takes it out again.</source>
   <translation>Se ha incorporado {source}. Deshacer, en el menú Editar, lo quita de nuevo.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_files.py" />
   <source>{hauls} hauls written to {path}.</source>
   <translation>{hauls} recogidas escritas en {path}.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_files.py" />
   <source>This log is read from a table: export it as CSV or XLSX.</source>
   <translation>Este registro se lee de una tabla: expórtelo como CSV o XLSX.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>male</source>
   <translation>macho</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>immature female</source>
   <translation>inmadura</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>mature female</source>
   <translation>adulta</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>point to point</source>
   <translation>de punta a punta</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>inside the points</source>
   <translation>sin las puntas</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>buster</source>
   <translation>mudando</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>soft</source>
   <translation>blanda</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>papershell</source>
   <translation>papel</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>buckram</source>
   <translation>correosa</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>hard</source>
   <translation>dura</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>none</source>
   <comment>no peeler sign</comment>
   <translation>ninguna</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>white</source>
   <translation>blanco</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>pink</source>
   <translation>rosa</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>red</source>
   <translation>rojo</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>cream</source>
   <translation>crema</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>yellowed</source>
   <translation>amarillento</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>rusty</source>
   <translation>herrumbroso</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>dark</source>
   <comment>abdomen of a crab</comment>
   <translation>oscuro</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>filling</source>
   <translation>medio lleno</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>full</source>
   <translation>lleno</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>bought</source>
   <translation>comprada</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>built</source>
   <translation>hecha</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>repaired</source>
   <translation>arreglada</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>changed</source>
   <translation>modificada</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>lost</source>
   <translation>perdida</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>found</source>
   <translation>encontrada</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/log_words.py" />
   <source>retired</source>
   <translation>retirada</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/look_back.py" />
   <source>No trip is logged yet. What hauls gave over time and by kind will be here.</source>
   <translation>Aún no hay ninguna salida anotada. Aquí estará lo que dieron las recogidas con el tiempo y por clases.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/look_back.py" />
   <source>Kind of trap</source>
   <translation>Modelo de nasa</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/look_back.py" />
   <source>Look back</source>
   <translation>Mirar atrás</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/look_back.py" />
   <source>Group by</source>
   <translation>Agrupar por</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/look_back.py" />
   <source>all</source>
   <translation>todos</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/look_back.py" />
   <source>What each group gave</source>
   <translation>Lo que dio cada grupo</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/look_back.py" />
   <source>Keepers a haul</source>
   <translation>De talla por recogida</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/look_back.py" />
   <source>Light crabs of 100 judged</source>
   <translation>Vacíos de cada 100 examinados</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/look_back.py" />
   <source>light, of 100 judged</source>
   <translation>vacíos, de 100 examinados</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/look_back.py" />
   <source>Looking back</source>
   <translation>Mirando atrás</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/look_back.py" />
   <source>Month</source>
   <translation>Mes</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/look_back_text.py" />
   <source>A haul (80%)</source>
   <translation>Por recog. (80 %)</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/look_back_text.py" />
   <source>Light (80%)</source>
   <translation>Vacíos (80 %)</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/look_back_text.py" />
   <source>{said}. Brackets hold 8 times in 10, as trips differ.</source>
   <translation>{said}. Lo que va entre paréntesis se cumple 8 de cada 10 veces, según varían las salidas.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/look_back_text.py" />
   <source>No haul is like that: choose “all” in more of the boxes above.</source>
   <translation>Ninguna recogida es así: elija «todos» en más casillas de arriba.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/look_back_text.py" />
   <source> Unlike hauls stand side by side here: whether one really is better, Weigh evidence tells.</source>
   <translation> Aquí se ven juntas recogidas distintas entre sí: si una cosa es de verdad mejor lo dice Sopesar indicios.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/look_back_text.py" />
   <source> The table has the newest {most_rows}.</source>
   <translation> La tabla tiene los {most_rows} más recientes.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/look_back_text.py" />
   <source>{keepers} keepers, {rate} a haul</source>
   <translation>{keepers} de talla, {rate} por recogida</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/look_back_text.py" />
   <source>none light</source>
   <translation>ninguno vacío</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/look_back_text.py" />
   <source>{one_in} light</source>
   <translation>vacíos: {one_in}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/look_back_text.py" />
   <source>{judged} judged, {light}</source>
   <translation>{judged} examinados, {light}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/merge_dialog.py" />
   <source>Import a whole log</source>
   <translation>Importar un registro completo</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/merge_dialog.py" />
   <source>Both logs hold what is below, but not alike. It stays as it is here. To have the file's instead, correct it here, or put the row into the bin and import again.</source>
   <translation>Los dos registros tienen lo de abajo, pero de forma distinta. Queda como está aquí. Si prefiere lo del archivo, corríjalo aquí, o lleve la fila a la papelera e importe de nuevo.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/merge_dialog.py" />
   <source>What both logs hold and not alike</source>
   <translation>Lo que ambos registros contienen de forma distinta</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/merge_dialog.py" />
   <source>Take in the rest</source>
   <translation>Incorporar lo demás</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/merge_dialog.py" />
   <source>Take it in</source>
   <translation>Incorporarlo</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/merge_text.py" />
   <source>crew</source>
   <translation>tripulación</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/merge_text.py" />
   <source>weather</source>
   <translation>tiempo</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/merge_text.py" />
   <source>kitchen: picked</source>
   <translation>cocina: abiertos</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/merge_text.py" />
   <source>kitchen: light</source>
   <translation>cocina: vacíos</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/merge_text.py" />
   <source>Here</source>
   <translation>Aquí</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/merge_text.py" />
   <source>In the file</source>
   <translation>En el archivo</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/merge_text.py" />
   <source>{source} holds: {told}.</source>
   <translation>{source} contiene: {told}.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/merge_text.py" />
   <source>nothing that is not in the log already</source>
   <translation>nada que no esté ya en el registro</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/merge_text.py" />
   <source>details of {trips}</source>
   <translation>datos de {trips}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/merge_text.py" />
   <source>history of {traps}</source>
   <translation>historial de {traps}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/merge_text.py" />
   <source>the haul</source>
   <translation>la recogida</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/merge_text.py" />
   <source>less is recorded</source>
   <translation>hay menos anotado</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/merge_text.py" />
   <source>more is recorded</source>
   <translation>hay más anotado</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trap_rows.py" />
   <source>{keepers} keepers, {each:.1f} a haul</source>
   <translation>{keepers} de talla, {each:.1f} por recogida</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trap_rows.py" />
   <source>{judged} judged, light {light_words}</source>
   <translation>{judged} examinados, vacíos: {light_words}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/traps_window.py" />
   <source>Traps by label</source>
   <translation>Nasas por etiqueta</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/traps_window.py" />
   <source>Label of a new trap</source>
   <translation>Etiqueta de una nasa nueva</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/traps_window.py" />
   <source>History of the trap</source>
   <translation>Historial de la nasa</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/traps_window.py" />
   <source>What befell it</source>
   <translation>Qué le pasó</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/traps_window.py" />
   <source>On which day</source>
   <translation>En qué día</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/traps_window.py" />
   <source>what was done, what it cost</source>
   <translation>qué se hizo, cuánto costó</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/traps_window.py" />
   <source>Notes to it</source>
   <translation>Notas a lo ocurrido</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/traps_window.py" />
   <source>Add to history</source>
   <translation>Añadir al historial</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/traps_window.py" />
   <source>Note it below the trap, with its day</source>
   <translation>Anotarlo en la nasa, con su día</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/traps_window.py" />
   <source>Take out</source>
   <translation>Quitar</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/traps_window.py" />
   <source>Take the chosen line out</source>
   <translation>Quitar la línea elegida</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/traps_window.py" />
   <source>Hauls of the trap, newest first</source>
   <translation>Recogidas de la nasa, primero las más recientes</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/traps_window.py" />
   <source>Trap {label}</source>
   <translation>Nasa {label}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/traps_window.py" />
   <source>history of trap</source>
   <translation>historial de la nasa</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/traps_window.py" />
   <source>Day</source>
   <translation>Día</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/traps_window.py" />
   <source>Nothing noted. Say below what befell the trap, and add it.</source>
   <translation>Nada anotado. Diga abajo qué le pasó a la nasa y añádalo.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/traps_window.py" />
   <source>No haul of this trap is logged.</source>
   <translation>No hay ninguna recogida de esta nasa en el diario.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/traps_window.py" />
   <source>History</source>
   <translation>Historial</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/traps_window.py" />
   <source>No trap yet</source>
   <translation>Aún no hay nasas</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/traps_window.py" />
   <source>Traps appear here with their first haul, or when you name one.</source>
   <translation>Las nasas aparecen aquí con su primera recogida, o cuando usted les da nombre.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/traps_window.py" />
   <source>description of trap</source>
   <translation>descripción de la nasa</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_details.py" />
   <source>kitchen count</source>
   <translation>recuento en la cocina</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_details.py" />
   <source>Light ones of those picked in the kitchen</source>
   <translation>Vacíos entre los abiertos en la cocina</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_details.py" />
   <source>Crabs of the whole catch that were picked or cracked open</source>
   <translation>Cangrejos de toda la captura que se pelaron o se abrieron</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_details.py" />
   <source>How many of the picked were light</source>
   <translation>Cuántos de los abiertos estaban vacíos</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_details.py" />
   <source>in your words</source>
   <translation>con sus palabras</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_details.py" />
   <source>is no number of people</source>
   <translation>no es un número de personas</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_details.py" />
   <source>write digits such as 2, or leave it empty</source>
   <translation>escriba cifras, como 2, o déjelo vacío</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_details.py" />
   <source>Crew</source>
   <translation>Gente</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_details.py" />
   <source>Kitchen: picked</source>
   <translation>Cocina: abiertos</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_details.py" />
   <source>Not saved. The entry {what}; {remedy}.</source>
   <translation>No se guardó. Lo escrito {what}; {remedy}.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_entry.py" />
   <source>Add a trap</source>
   <translation>Añadir nasa</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_entry.py" />
   <source>A row after this one (Ctrl+Return)</source>
   <translation>Una fila después de esta (Ctrl+Intro)</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_entry.py" />
   <source>Remove trap</source>
   <translation>Quitar nasa</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_entry.py" />
   <source>Into the bin, with its counts</source>
   <translation>A la papelera, con sus recuentos</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_entry.py" />
   <source>Single crabs…</source>
   <translation>Uno por uno…</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_entry.py" />
   <source>Crabs of this trap looked at one by one (Ctrl+K)</source>
   <translation>Los cangrejos de esta nasa, mirados uno por uno (Ctrl+K)</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_entry.py" />
   <source>Try again</source>
   <translation>Reintentar</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_entry.py" />
   <source>Save what is kept here</source>
   <translation>Guardar lo que se conserva aquí</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_entry.py" />
   <source>The trip</source>
   <translation>La salida</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_entry.py" />
   <source>{trip}, {place} (times of {zone})</source>
   <translation>{trip}, {place} (horas de {zone})</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_entry.py" />
   <source>Not in the log yet. {why} What you typed stays here and is tried again.</source>
   <translation>Todavía no está en el registro. {why} Lo que escribió se queda aquí y se volverá a intentar.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_entry.py" />
   <source>{what} of trip {name}</source>
   <translation>{what} de la salida {name}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_entry.py" />
   <source>new trap in trip {name}</source>
   <translation>nasa nueva en la salida {name}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_entry.py" />
   <source>removal of a trap from trip {name}</source>
   <translation>nasa quitada de la salida {name}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_entry.py" />
   <source>{what} of trap {trap}, {name}</source>
   <translation>{what} de la nasa {trap}, {name}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_entry.py" />
   <source>Not saved. {why}</source>
   <translation>No se guardó. {why}</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_list.py" />
   <source>Kept</source>
   <translation>De talla</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_list.py" />
   <source>Find: trip, month, year or place</source>
   <translation>Buscar: salida, mes, año o lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_list.py" />
   <source>Find trips by name or place</source>
   <translation>Buscar salidas por nombre o lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_list.py" />
   <source>Logged trips, newest first</source>
   <translation>Salidas anotadas, primero las más recientes</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/trip_list.py" />
   <source>No trip fits.</source>
   <translation>Ninguna salida coincide.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/view.py" />
   <source>No trip is logged yet. Every trip will be a row here, with what each trap gave: forecasts, plans and trap comparisons learn from it. Begin with a new trip above, or bring in a haul table (CSV) that you already keep.</source>
   <translation>Aún no hay ninguna salida anotada. Cada salida será aquí una fila, con lo que dio cada nasa: de ella aprenden los pronósticos, los planes y las comparaciones de nasas. Empiece arriba con una salida nueva, o importe una tabla de recogidas (CSV) que ya lleve.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/view.py" />
   <source>Open the log for writing, if the other window is closed by now</source>
   <translation>Abrir el registro para escribir, si la otra ventana ya está cerrada</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/view.py" />
   <source>New trip today</source>
   <translation>Salida nueva hoy</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/view.py" />
   <source>A trip hauled today, with the traps and spots of the last one</source>
   <translation>Una salida recogida hoy, con las nasas y los puestos de la última</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/view.py" />
   <source>Traps…</source>
   <translation>Nasas…</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/view.py" />
   <source>Every trap, what befell it, what it gave</source>
   <translation>Cada nasa, qué le ha pasado, qué ha dado</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/view.py" />
   <source>Bin…</source>
   <translation>Papelera…</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/view.py" />
   <source>What was deleted, until you empty it</source>
   <translation>Lo borrado, hasta que lo vacíe</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/view.py" />
   <source>Look back…</source>
   <translation>Mirar atrás…</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/view.py" />
   <source>Catch and light crabs over time and by kind</source>
   <translation>Captura y cangrejos vacíos en el tiempo y por tipos</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/view.py" />
   <source>Delete trip</source>
   <translation>Borrar salida</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/view.py" />
   <source>Into the bin; Undo in the Edit menu brings it back at once</source>
   <translation>A la papelera; Deshacer, en el menú Editar, la recupera enseguida</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/view.py" />
   <source>Import a haul table…</source>
   <translation>Importar una tabla de recogidas…</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/view.py" />
   <source>Log hauls </source>
   <translation>Anotar recogidas </translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/view.py" />
   <source>⚠ {reason}This log is open for reading only, so nothing can be entered here.</source>
   <translation>⚠ {reason}Este registro está abierto solo para leer, así que aquí no se puede anotar nada.</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/view.py" />
   <source>Laying out the traps</source>
   <translation>Repartiendo las nasas</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/view.py" />
   <source>Entries are not in the log yet</source>
   <translation>Hay anotaciones que aún no están en el registro</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/view.py" />
   <source>The log could not be written, and these trips hold entries that are only here: {listed}. Quit and lose them?</source>
   <translation>No se pudo escribir el registro, y estas salidas tienen anotaciones que solo están aquí: {listed}. ¿Salir y perderlas?</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/view.py" />
   <source>New trip from {plan_name} ({day})</source>
   <translation>Salida nueva con {plan_name} ({day})</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/view.py" />
   <source>Rows with the plan's times and spots and your traps</source>
   <translation>Filas con las horas y los puestos del plan y sus nasas</translation>
  </message>
  <message>
   <location filename="planner/ui/hauls/view.py" />
   <source>start of trip {trip}</source>
   <translation>inicio de la salida {trip}</translation>
  </message>
  <message>
   <location filename="planner/ui/load/checklist_cards.py" />
   <source>a rule you entered for this place</source>
   <translation>una norma que usted anotó para este lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/load/checklist_cards.py" />
   <source>worked out for this plan</source>
   <translation>calculado para este plan</translation>
  </message>
  <message>
   <location filename="planner/ui/load/checklist_cards.py" />
   <source>common practice</source>
   <translation>práctica habitual</translation>
  </message>
  <message>
   <location filename="planner/ui/load/deck_button.py" />
   <source>To tally on deck</source>
   <translation>Para contar a bordo</translation>
  </message>
  <message>
   <location filename="planner/ui/load/deck_button.py" />
   <source>Take this trip's traps along, to count crabs on paper or on a phone</source>
   <translation>Llévese las nasas de esta salida en papel o en un teléfono, para contar los cangrejos</translation>
  </message>
  <message>
   <location filename="planner/ui/load/deck_button.py" />
   <source>Tally sheet to print…</source>
   <translation>Hoja de recuento (imprimir)…</translation>
  </message>
  <message>
   <location filename="planner/ui/load/deck_button.py" />
   <source>Tally page for a phone…</source>
   <translation>Página de recuento (teléfono)…</translation>
  </message>
  <message>
   <location filename="planner/ui/load/deck_button.py" />
   <source>Save the tally sheet</source>
   <translation>Guardar la hoja de recuento</translation>
  </message>
  <message>
   <location filename="planner/ui/load/deck_button.py" />
   <source>PDF (*.pdf)</source>
   <translation>PDF (*.pdf)</translation>
  </message>
  <message>
   <location filename="planner/ui/load/deck_button.py" />
   <source>Tally sheet written to {}. Print it from there.</source>
   <translation>Hoja de recuento guardada en {}. Imprímala desde ahí.</translation>
  </message>
  <message>
   <location filename="planner/ui/load/deck_button.py" />
   <source>Save the tally page</source>
   <translation>Guardar la página de recuento</translation>
  </message>
  <message>
   <location filename="planner/ui/load/deck_button.py" />
   <source>Web page (*.html)</source>
   <translation>Página web (*.html)</translation>
  </message>
  <message>
   <location filename="planner/ui/load/deck_button.py" />
   <source>Tally page written to {}. Send that file to the phone and open it there, at home: it needs no network afterwards. What it counts comes back through Import in Log hauls.</source>
   <translation>Página de recuento guardada en {}. Envíe ese archivo al teléfono y ábralo allí, en casa: después no necesita red. Lo que cuente vuelve con Importar, en Anotar recogidas.</translation>
  </message>
  <message>
   <location filename="planner/ui/load/deck_button.py" />
   <source>Writing the tally</source>
   <translation>Escribiendo el recuento</translation>
  </message>
  <message>
   <location filename="planner/ui/load/layout_desk.py" />
   <source>{trap} to {spot}</source>
   <translation>{trap} a {spot}</translation>
  </message>
  <message>
   <location filename="planner/ui/load/layout_desk.py" />
   <source>Working out what this layout is worth…</source>
   <translation>Calculando cuánto vale este reparto…</translation>
  </message>
  <message>
   <location filename="planner/ui/load/layout_desk.py" />
   <source>Trip {name} stands in the log with the traps as laid out. Correct what went otherwise; Undo in the Edit menu takes it out again.</source>
   <translation>La salida {name} está en el registro con las nasas según el reparto. Corrija lo que haya salido de otro modo; Deshacer, en el menú Editar, la quita otra vez.</translation>
  </message>
  <message>
   <location filename="planner/ui/load/layout_desk.py" />
   <source>layout as proposed</source>
   <translation>reparto según la propuesta</translation>
  </message>
  <message>
   <location filename="planner/ui/load/layout_desk.py" />
   <source>start of trip {name}</source>
   <translation>inicio de la salida {name}</translation>
  </message>
  <message>
   <location filename="planner/ui/load/layout_editor.py" />
   <source>Drag a trap to another spot, or choose it and press Alt with the up or down arrow. Ctrl+Z takes a move back.</source>
   <translation>Arrastre una nasa a otro puesto, o elíjala y pulse Alt con la flecha arriba o abajo. Ctrl+Z deshace un movimiento.</translation>
  </message>
  <message>
   <location filename="planner/ui/load/layout_editor.py" />
   <source>No move to take back or make again</source>
   <translation>Ningún movimiento que deshacer o rehacer</translation>
  </message>
  <message>
   <location filename="planner/ui/load/layout_editor.py" />
   <source>Which trap goes where on the next trip will stand here. Give the place its spots in the place book, and log traps with their design and spot.</source>
   <translation>Aquí estará qué nasa va dónde en la próxima salida. Dé al lugar sus puestos en el libro de lugares, y anote las nasas con su modelo y su puesto.</translation>
  </message>
  <message>
   <location filename="planner/ui/load/layout_editor.py" />
   <source>To the spot above</source>
   <translation>Al puesto anterior</translation>
  </message>
  <message>
   <location filename="planner/ui/load/layout_editor.py" />
   <source>Move the chosen trap; Alt with the up arrow does the same</source>
   <translation>Mover la nasa elegida; Alt con la flecha arriba hace lo mismo</translation>
  </message>
  <message>
   <location filename="planner/ui/load/layout_editor.py" />
   <source>To the spot below</source>
   <translation>Al puesto siguiente</translation>
  </message>
  <message>
   <location filename="planner/ui/load/layout_editor.py" />
   <source>Move the chosen trap; Alt with the down arrow does the same</source>
   <translation>Mover la nasa elegida; Alt con la flecha abajo hace lo mismo</translation>
  </message>
  <message>
   <location filename="planner/ui/load/layout_editor.py" />
   <source>Redo move</source>
   <translation>Rehacer</translation>
  </message>
  <message>
   <location filename="planner/ui/load/layout_editor.py" />
   <source>As proposed</source>
   <translation>Según propuesta</translation>
  </message>
  <message>
   <location filename="planner/ui/load/layout_editor.py" />
   <source>Put every trap back where it was proposed</source>
   <translation>Devolver cada nasa a donde se propuso</translation>
  </message>
  <message>
   <location filename="planner/ui/load/layout_editor.py" />
   <source>Start this trip in the log</source>
   <translation>Iniciar esta salida en el registro</translation>
  </message>
  <message>
   <location filename="planner/ui/load/layout_editor.py" />
   <source>Rows with the traps at these spots, to fill in as you haul</source>
   <translation>Filas con las nasas en estos puestos, para rellenar mientras recoge</translation>
  </message>
  <message>
   <location filename="planner/ui/load/layout_editor.py" />
   <source>Layout of the next trip</source>
   <translation>Reparto de las nasas en la próxima salida</translation>
  </message>
  <message>
   <location filename="planner/ui/load/layout_editor.py" />
   <source>Spot and traps</source>
   <translation>Puesto y nasas</translation>
  </message>
  <message>
   <location filename="planner/ui/load/layout_editor.py" />
   <source>no trap</source>
   <translation>ninguna nasa</translation>
  </message>
  <message>
   <location filename="planner/ui/load/layout_editor.py" />
   <source>Design, water and line</source>
   <translation>Modelo, agua y cabo</translation>
  </message>
  <message>
   <location filename="planner/ui/load/layout_editor.py" />
   <source> (moved)</source>
   <translation> (movida)</translation>
  </message>
  <message>
   <location filename="planner/ui/load/take_along.py" />
   <source>Paper of the sheets</source>
   <translation>Papel de las hojas</translation>
  </message>
  <message>
   <location filename="planner/ui/load/take_along.py" />
   <source>Print or save trip sheet…</source>
   <translation>Imprimir o guardar hoja de salida…</translation>
  </message>
  <message>
   <location filename="planner/ui/load/take_along.py" />
   <source>One page to take along, as a PDF</source>
   <translation>Una página para llevar, en PDF</translation>
  </message>
  <message>
   <location filename="planner/ui/load/take_along.py" />
   <source>Calendar…</source>
   <translation>Calendario…</translation>
  </message>
  <message>
   <location filename="planner/ui/load/take_along.py" />
   <source>Check, set and haul with alarms, for any calendar</source>
   <translation>Comprobar, calar y recoger con avisos, para cualquier calendario</translation>
  </message>
  <message>
   <location filename="planner/ui/load/take_along.py" />
   <source>Waypoints…</source>
   <translation>Puntos GPX…</translation>
  </message>
  <message>
   <location filename="planner/ui/load/take_along.py" />
   <source>The spots with their traps, for a plotter (GPX)</source>
   <translation>Los puestos con sus nasas, para un plóter (GPX)</translation>
  </message>
  <message>
   <location filename="planner/ui/load/take_along.py" />
   <source>Water table…</source>
   <translation>Tabla del agua…</translation>
  </message>
  <message>
   <location filename="planner/ui/load/take_along.py" />
   <source>The water at each spot every ten minutes (CSV)</source>
   <translation>El agua en cada puesto cada diez minutos (CSV)</translation>
  </message>
  <message>
   <location filename="planner/ui/load/take_along.py" />
   <source>Save the trip sheet</source>
   <translation>Guardar la hoja de la salida</translation>
  </message>
  <message>
   <location filename="planner/ui/load/take_along.py" />
   <source>Writing the trip sheet</source>
   <translation>Escribiendo la hoja de la salida</translation>
  </message>
  <message>
   <location filename="planner/ui/load/take_along.py" />
   <source>Save the calendar file</source>
   <translation>Guardar el archivo de calendario</translation>
  </message>
  <message>
   <location filename="planner/ui/load/take_along.py" />
   <source>Calendar (*.ics)</source>
   <translation>Calendario (*.ics)</translation>
  </message>
  <message>
   <location filename="planner/ui/load/take_along.py" />
   <source>Save the waypoints</source>
   <translation>Guardar los puntos</translation>
  </message>
  <message>
   <location filename="planner/ui/load/take_along.py" />
   <source>Waypoints (*.gpx)</source>
   <translation>Puntos (*.gpx)</translation>
  </message>
  <message>
   <location filename="planner/ui/load/take_along.py" />
   <source>Save the water</source>
   <translation>Guardar el agua</translation>
  </message>
  <message>
   <location filename="planner/ui/load/take_along.py" />
   <source>Writing</source>
   <translation>Escribiendo</translation>
  </message>
  <message>
   <location filename="planner/ui/load/take_along.py" />
   <source>Letter</source>
   <translation>Carta</translation>
  </message>
  <message>
   <location filename="planner/ui/load/take_along.py" />
   <source>Trip sheet written to {path}. Print it from there.</source>
   <translation>Hoja de la salida escrita en {path}. Imprímala desde ahí.</translation>
  </message>
  <message>
   <location filename="planner/ui/load/take_along.py" />
   <source>Paper</source>
   <translation>Papel</translation>
  </message>
  <message>
   <location filename="planner/ui/load/take_along.py" />
   <source>Written to {path}.</source>
   <translation>Escrito en {path}.</translation>
  </message>
  <message>
   <location filename="planner/ui/load/text.py" />
   <source>Set {set_at}, haul {haul_at} {zone}</source>
   <translation>Cale el {set_at}, recoja el {haul_at} {zone}</translation>
  </message>
  <message>
   <location filename="planner/ui/load/text.py" />
   <source>Leave with bait at {clock}. Soak {soak}, {count} full keepers, light crabs {light}.</source>
   <translation>Salga con cebo a las {clock}. Tiempo en el agua {soak}, {count} llenos de talla, cangrejos vacíos: {light}.</translation>
  </message>
  <message>
   <location filename="planner/ui/load/text.py" />
   <source>{cover}; {line} of line</source>
   <translation>{cover}; {line} de cabo</translation>
  </message>
  <message>
   <location filename="planner/ui/load/text.py" />
   <source>at least {height} over the trap</source>
   <translation>al menos {height} sobre la nasa</translation>
  </message>
  <message>
   <location filename="planner/ui/load/text.py" />
   <source>the trap stands dry at the lowest water</source>
   <translation>la nasa queda en seco en el nivel más bajo</translation>
  </message>
  <message>
   <location filename="planner/ui/load/text.py" />
   <source>No spots are entered for this place.</source>
   <translation>No hay puestos anotados para este lugar.</translation>
  </message>
  <message>
   <location filename="planner/ui/load/trap_card.py" />
   <source>Where the traps go, in the order of setting</source>
   <translation>Dónde van las nasas, por orden de calada</translation>
  </message>
  <message>
   <location filename="planner/ui/load/trap_card.py" />
   <source>Move traps…</source>
   <translation>Mover nasas…</translation>
  </message>
  <message>
   <location filename="planner/ui/load/trap_card.py" />
   <source>Put traps at other spots</source>
   <translation>Poner nasas en otros puestos</translation>
  </message>
  <message>
   <location filename="planner/ui/load/trap_card.py" />
   <source>Where the traps go</source>
   <translation>Dónde van las nasas</translation>
  </message>
  <message>
   <location filename="planner/ui/load/trap_card.py" />
   <source>Done</source>
   <translation>Listo</translation>
  </message>
  <message>
   <location filename="planner/ui/load/view.py" />
   <source>No plan is chosen. Choose dates first; what goes aboard for that trip will be here: traps and lines, bait, rules of the place, safety, and the trip sheet to print.</source>
   <translation>No hay ningún plan elegido. Elija primero las fechas; lo que va a bordo en esa salida aparecerá aquí: nasas y cabos, cebo, normas del lugar, seguridad, y la hoja de la salida para imprimir.</translation>
  </message>
  <message>
   <location filename="planner/ui/load/view.py" />
   <source>Another plan</source>
   <translation>Otro plan</translation>
  </message>
  <message>
   <location filename="planner/ui/load/view.py" />
   <source>Choose dates: pick another plan to load up for</source>
   <translation>Elegir fechas: escoja otro plan para preparar la salida</translation>
  </message>
  <message>
   <location filename="planner/ui/load/view.py" />
   <source>Choose dates</source>
   <translation>Elegir fechas</translation>
  </message>
  <message>
   <location filename="planner/ui/load/view.py" />
   <source>Checklist</source>
   <translation>Lista de comprobación</translation>
  </message>
  <message>
   <location filename="planner/ui/load/view.py" />
   <source>Packing the list</source>
   <translation>Preparando la lista</translation>
  </message>
  <message>
   <location filename="planner/ui/load/view.py" />
   <source>The plans are being worked out. What goes aboard for the chosen one will be here: traps and lines, bait, rules of the place, safety, and the trip sheet.</source>
   <translation>Se están calculando los planes. Lo que va a bordo en el elegido aparecerá aquí: nasas y cabos, cebo, normas del lugar, seguridad, y la hoja de la salida.</translation>
  </message>
  <message>
   <location filename="planner/ui/load/view.py" />
   <source>{ticked} of {whole} ticked off for this trip</source>
   <translation>{ticked} de {whole} puntos marcados para esta salida</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>As the system</source>
   <translation>Como el sistema</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>Light</source>
   <comment>colours</comment>
   <translation>Claro</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>Dark</source>
   <comment>colours</comment>
   <translation>Oscuro</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>&amp;Edit</source>
   <translation>&amp;Editar</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>&amp;Undo</source>
   <translation>&amp;Deshacer</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>&amp;Redo</source>
   <translation>&amp;Rehacer</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>&amp;File</source>
   <translation>&amp;Archivo</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>&amp;Open place file…</source>
   <translation>&amp;Abrir archivo de lugar…</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>Show the &amp;demo place</source>
   <translation>Mostrar el lugar de &amp;demostración</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>&amp;Backups of the log…</source>
   <translation>&amp;Copias de seguridad del registro…</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>&amp;Quit</source>
   <translation>&amp;Salir</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>Strip as &amp;table</source>
   <translation>Franja como &amp;tabla</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>&amp;Colours</source>
   <translation>&amp;Colores</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>&amp;Units</source>
   <translation>&amp;Unidades</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>The language changes when Fullshell is started again.</source>
   <translation>El idioma cambiará cuando vuelva a iniciar Fullshell.</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>&amp;Help with this view</source>
   <translation>&amp;Ayuda de esta vista</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>&amp;Contents of the guide</source>
   <translation>&amp;Contenido de la guía</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>&amp;Questions and answers</source>
   <translation>&amp;Preguntas y respuestas</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>Check this &amp;installation…</source>
   <translation>Comprobar esta &amp;instalación…</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>&amp;About Fullshell</source>
   <translation>Acerca &amp;de Fullshell</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>Metres</source>
   <translation>Metros</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>Feet</source>
   <translation>Pies</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>24-hour clock</source>
   <translation>Reloj de 24 horas</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>12-hour clock</source>
   <translation>Reloj de 12 horas</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>&amp;View</source>
   <translation>&amp;Ver</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>&amp;Language</source>
   <translation>&amp;Idioma</translation>
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>&amp;Help</source>
   <translation>A&amp;yuda</translation>
  </message>
  <message>
   <location filename="planner/ui/picture.py" />
   <source>there is no font on this machine, so all text would be boxes; install one; on Debian and Ubuntu: sudo apt-get install {package}</source>
   <translation>no hay ningún tipo de letra en este equipo, así que todo el texto serían recuadros; instale uno; en Debian y Ubuntu: sudo apt-get install {package}</translation>
  </message>
  <message>
   <location filename="planner/ui/picture.py" />
   <source>{out}: the picture could not be written; name a .png file in a folder that exists and can be written to</source>
   <translation>{out}: no se pudo escribir la imagen; indique un archivo .png en una carpeta que exista y en la que se pueda escribir</translation>
  </message>
  <message>
   <location filename="planner/ui/place_box.py" />
   <source>The place that every view shows</source>
   <translation>El lugar que muestran todas las vistas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_fields.py" />
   <source>What to edit</source>
   <translation>Qué editar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_fields.py" />
   <source>Spots and ramp</source>
   <translation>Puestos y rampa</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_fields.py" />
   <source>Temperature</source>
   <translation>Temperatura</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_fields.py" />
   <source>Rules</source>
   <translation>Normas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_fields.py" />
   <source>Free days</source>
   <translation>Días libres</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_files.py" />
   <source>layout</source>
   <translation>formato</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_pane.py" />
   <source>{month_days} days from {day} {first.year}, {key}.</source>
   <translation>{month_days} días desde el {day} {first.year}, {key}.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_pane.py" />
   <source>Month of water of the edited place</source>
   <translation>Mes de agua del lugar editado</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_pane.py" />
   <source>High and low waters of the edited place</source>
   <translation>Pleamares y bajamares del lugar editado</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_pane.py" />
   <source>The water this makes</source>
   <translation>El agua que resulta</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_pane.py" />
   <source>Checking the water</source>
   <translation>Comprobando el agua</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_pane.py" />
   <source> Dotted: as saved. Line: as edited.</source>
   <translation> Puntos: lo guardado. Línea: lo editado.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_pane.py" />
   <source> Open marks: what you saw.</source>
   <translation> Marcas huecas: lo que usted vio.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_pane.py" />
   <source>Local time</source>
   <translation>Hora local</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_pane.py" />
   <source>Height</source>
   <translation>Altura</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_pane.py" />
   <source>No water yet: {things} to put right, marked with ⚠ beside the fields. Nothing is saved until then.</source>
   <translation>Aún no hay agua: {things} por corregir, con la marca ⚠ junto a los campos. Hasta entonces no se guarda nada.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_pane.py" />
   <source>Working out range, kind and extremes…</source>
   <translation>Calculando carrera, tipo y extremos…</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_pane.py" />
   <source>thing</source>
   <translation>cosa</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_pane.py" />
   <source>things</source>
   <translation>cosas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_preview.py" />
   <source>First waters: {first}. Compare them with the agency's own table: hours apart means a wrong clock of the lags, heights of a third or of three times a wrong unit.</source>
   <translation>Primeras mareas: {first}. Compárelas con la tabla oficial: horas de diferencia indican un reloj equivocado de los desfases; alturas de un tercio o del triple, una unidad equivocada.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_preview.py" />
   <source>{kind} {when} {clock} ({height})</source>
   <translation>{kind} {when} {clock} ({height})</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_preview.py" />
   <source>Tide: {kind}.</source>
   <translation>Marea: {kind}.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_preview.py" />
   <source>Range {mean} on average, springs {springs}, neaps {neaps}.</source>
   <translation>Carrera de {mean} de media, {springs} en mareas vivas, {neaps} en mareas muertas.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_preview.py" />
   <source>Highest {highest}, lowest {lowest} in the 19 years from {first_year}.</source>
   <translation>Máximo {highest}, mínimo {lowest} en los 19 años desde {first_year}.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_preview.py" />
   <source>The water never turns here.</source>
   <translation>Aquí no hay pleamares ni bajamares.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_preview.py" />
   <source>choose another day</source>
   <translation>elija otro día</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_section.py" />
   <source> (found {value})</source>
   <translation> (se encontró {value})</translation>
  </message>
  <message>
   <location filename="planner/ui/places/edit_section.py" />
   <source>min</source>
   <translation>min</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>Calendars (*.ics *.ical *.ifb);;All files (*)</source>
   <translation>Calendarios (*.ics *.ical *.ifb);;Todos los archivos (*)</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>more day</source>
   <translation>día más</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>more days</source>
   <translation>días más</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>05:30; empty: from midnight</source>
   <translation>05:30; vacío: desde medianoche</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>20:30; empty: to midnight</source>
   <translation>20:30; vacío: hasta medianoche</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>Take days from a calendar file…</source>
   <translation>Tomar días de un archivo de calendario…</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>Days on which the calendar has something on in your hours are not free</source>
   <translation>Los días en que el calendario tiene algo en sus horas no son libres</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>Days on which the calendar has an entry in your hours are free</source>
   <translation>Los días en que el calendario tiene una entrada en sus horas son libres</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>Take days that are not free from a calendar file</source>
   <translation>Tomar días no libres de un archivo de calendario</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>Take further free days from a calendar file</source>
   <translation>Tomar más días libres de un archivo de calendario</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>Days of the week</source>
   <translation>Días de la semana</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>F&amp;rom (time of day)</source>
   <translation>&amp;Desde (hora del día)</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>&amp;To (time of day)</source>
   <translation>&amp;Hasta (hora del día)</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>Take days from a calendar</source>
   <translation>Tomar días de un calendario</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>Reading the calendar</source>
   <translation>Leyendo el calendario</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>Further free days</source>
   <translation>Más días libres</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>Days not free</source>
   <translation>Días no libres</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>such as 2026-05-25, 2026-07-03</source>
   <translation>como 2026-05-25, 2026-07-03</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>Free on {given}</source>
   <translation>Libre: {given}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>When you can be on the water</source>
   <translation>Cuándo puede estar en el agua</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>Plans set and haul only then, and leave you the time to fetch the bait.</source>
   <translation>Los planes calan y recogen solo entonces, y le dejan tiempo para ir por el cebo.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>Not free after all</source>
   <translation>No libres, por excepción</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>Free besides</source>
   <translation>Libres además</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>{name}: {more} marked as not free, in the year from today.</source>
   <translation>{name}: {more} en la lista de no libres, en el año a partir de hoy.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>{name}: {more} marked as free, in the year from today.</source>
   <translation>{name}: {more} en la lista de libres, en el año a partir de hoy.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/free_section.py" />
   <source>Give the place a time zone first: a calendar's hours need it.</source>
   <translation>Dé primero una zona horaria al lugar: las horas de un calendario la necesitan.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/new_place.py" />
   <source>38.2, north positive</source>
   <translation>38.2, norte positivo</translation>
  </message>
  <message>
   <location filename="planner/ui/places/new_place.py" />
   <source>-76.1, east positive</source>
   <translation>-76.1, este positivo</translation>
  </message>
  <message>
   <location filename="planner/ui/places/new_place.py" />
   <source>Make the place</source>
   <translation>Crear el lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/new_place.py" />
   <source>Write its file, and go on to its water, spots and rules</source>
   <translation>Escribir su archivo y seguir con su agua, sus puestos y sus normas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/new_place.py" />
   <source>Cancel</source>
   <translation>Cancelar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/new_place.py" />
   <source>Writing the place file</source>
   <translation>Escribiendo el archivo de lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/new_place.py" />
   <source>&amp;Name</source>
   <translation>&amp;Nombre</translation>
  </message>
  <message>
   <location filename="planner/ui/places/new_place.py" />
   <source>&amp;Latitude, degrees</source>
   <translation>&amp;Latitud, grados</translation>
  </message>
  <message>
   <location filename="planner/ui/places/new_place.py" />
   <source>L&amp;ongitude, degrees</source>
   <translation>L&amp;ongitud, grados</translation>
  </message>
  <message>
   <location filename="planner/ui/places/new_place.py" />
   <source>Time &amp;zone</source>
   <translation>&amp;Zona horaria</translation>
  </message>
  <message>
   <location filename="planner/ui/places/new_place.py" />
   <source>A place file is written into your places, with remarks on what to fill in: the water from an agency's constants or by offsets from another place, your spots, the ramp, the rules. Then you fill in its water here.</source>
   <translation>Se escribe un archivo de lugar entre sus lugares, con notas sobre lo que hay que rellenar: el agua, con las constantes de un servicio hidrográfico o con diferencias respecto a otro lugar; sus puestos, la rampa, las normas. Después se completa aquí su agua.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_panel.py" />
   <source>A table with the header time,height,kind</source>
   <translation>Una tabla con el encabezado time,height,kind</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_panel.py" />
   <source>Observed high and low waters</source>
   <translation>Pleamares y bajamares observadas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_panel.py" />
   <source>Nothing entered yet. Add a water that you saw, or load a file.</source>
   <translation>Aún no hay nada. Añada una pleamar o bajamar que haya visto, o cargue un archivo.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_panel.py" />
   <source>Add a water</source>
   <translation>Añadir marea</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_panel.py" />
   <source>A row for a high or low water that you saw</source>
   <translation>Una fila para una pleamar o bajamar que haya visto</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_panel.py" />
   <source>Put back the line taken out last</source>
   <translation>Devolver la última línea quitada</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_panel.py" />
   <source>Load a CSV file…</source>
   <translation>Cargar archivo CSV…</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_panel.py" />
   <source>Check against what you saw</source>
   <translation>Comparar con lo que usted vio</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_panel.py" />
   <source>Differences from prediction</source>
   <translation>Diferencias con la predicción</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_panel.py" />
   <source>Times on the clock of {key}, such as 2026-07-04 06:12. Heights above {datum} in {unit}, as in the place file; leave them empty when you only saw the time.</source>
   <translation>Horas en el reloj de {key}, como 2026-07-04 06:12. Alturas sobre {datum} en {unit}, como en el archivo de lugar; déjelas vacías si solo vio la hora.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_panel.py" />
   <source>High or low water</source>
   <translation>Pleamar o bajamar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_panel.py" />
   <source>Load observed waters</source>
   <translation>Cargar mareas observadas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_panel.py" />
   <source>Tables (*.csv)</source>
   <translation>Tablas (*.csv)</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_panel.py" />
   <source>Reading the waters</source>
   <translation>Leyendo las mareas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_panel.py" />
   <source>Comparing the waters</source>
   <translation>Comparando las mareas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_panel.py" />
   <source>Seen</source>
   <translation>Vista</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_panel.py" />
   <source>Time off</source>
   <translation>Dif. de hora</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_panel.py" />
   <source>Height off</source>
   <translation>Dif. de altura</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_panel.py" />
   <source>What they say</source>
   <translation>Lo que dicen</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_panel.py" />
   <source>Height, {unit}</source>
   <translation>Altura, {unit}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_rows.py" />
   <source>{what}: on average {shown} {sides} than predicted</source>
   <translation>{what}: de media, {shown} {sides} que lo previsto</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_rows.py" />
   <source>{given}; one alone shows no scatter.</source>
   <translation>{given}; una sola no muestra cuánto varían.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_rows.py" />
   <source>{value_ft:{sign}.1f} ft</source>
   <translation>{value_ft:{sign}.1f} ft</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_rows.py" />
   <source>Row {number},{rest}</source>
   <translation>Fila {number},{rest}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_rows.py" />
   <source>{matched} of {rows} observed waters found their predicted one.</source>
   <translation>{matched} de {rows} mareas observadas encontraron su marea prevista.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_rows.py" />
   <source>{given}; single ones scatter about that by {shown}.</source>
   <translation>{given}; las mareas sueltas se apartan de eso unos {shown}.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_rows.py" />
   <source>{value_m:{sign}.0f} cm</source>
   <translation>{value_m:{sign}.0f} cm</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_rows.py" />
   <source>Enter a few high or low waters that you saw or read off a gauge. How far the prediction is off, and how steadily, will be said here.</source>
   <translation>Escriba unas cuantas pleamares o bajamares que haya visto o leído en un mareógrafo. Aquí se dirá cuánto se aparta de ellas la predicción, y con qué constancia.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_rows.py" />
   <source>None of {rows} observed waters is within eight hours of a predicted one of its kind. Check dates and kinds.</source>
   <translation>Ninguna de las {rows} mareas observadas está a menos de ocho horas de una prevista de su clase. Compruebe las fechas y las clases.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_rows.py" />
   <source>Times</source>
   <translation>Horas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_rows.py" />
   <source>{few_turns} or more are needed before anything is said about what may be wrong: wind alone moves single waters by decimetres and half an hour.</source>
   <translation>Hacen falta {few_turns} o más antes de decir nada sobre lo que puede estar mal: el viento por sí solo mueve una marea suelta decímetros y media hora.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_rows.py" />
   <source>{value:d} min</source>
   <translation>{value:d} min</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_rows.py" />
   <source>Heights</source>
   <translation>Alturas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_rows.py" />
   <source>higher</source>
   <translation>más altas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_rows.py" />
   <source>lower</source>
   <translation>más bajas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_rows.py" />
   <source>no match</source>
   <translation>sin pareja</translation>
  </message>
  <message>
   <location filename="planner/ui/places/observed_rows.py" />
   <source>{minutes:+.0f} min</source>
   <translation>{minutes:+.0f} min</translation>
  </message>
  <message>
   <location filename="planner/ui/places/offset_fits.py" />
   <source>{mean} min {side} (80%: {range} min)</source>
   <translation>{mean} min {side} (80 %: {range} min)</translation>
  </message>
  <message>
   <location filename="planner/ui/places/offset_fits.py" />
   <source>height plus {height} (80%: {range})</source>
   <translation>altura más {height} (80 %: {range})</translation>
  </message>
  <message>
   <location filename="planner/ui/places/offset_fits.py" />
   <source>{kind}: {minutes}; {height} (from {count} seen).</source>
   <translation>{kind}: {minutes}; {height} (de {count} vistas).</translation>
  </message>
  <message>
   <location filename="planner/ui/places/offset_fits.py" />
   <source>height times {mean} (80%: {range})</source>
   <translation>altura por {mean} (80 %: {range})</translation>
  </message>
  <message>
   <location filename="planner/ui/places/offsets_form.py" />
   <source>Later than there, minutes</source>
   <translation>Minutos más tarde que allí</translation>
  </message>
  <message>
   <location filename="planner/ui/places/offsets_form.py" />
   <source>Height there times</source>
   <translation>Altura de allí por</translation>
  </message>
  <message>
   <location filename="planner/ui/places/offsets_form.py" />
   <source>then plus</source>
   <translation>y luego más</translation>
  </message>
  <message>
   <location filename="planner/ui/places/offsets_form.py" />
   <source>Reference place</source>
   <translation>Lugar de referencia</translation>
  </message>
  <message>
   <location filename="planner/ui/places/offsets_form.py" />
   <source>One diff&amp;erence for every tide</source>
   <translation>Una misma difer&amp;encia para toda marea</translation>
  </message>
  <message>
   <location filename="planner/ui/places/offsets_form.py" />
   <source>By time of day and hei&amp;ght (interpolated)</source>
   <translation>Por &amp;hora del día y altura (interpoladas)</translation>
  </message>
  <message>
   <location filename="planner/ui/places/offsets_form.py" />
   <source>&amp;Reference place</source>
   <translation>Lugar de &amp;referencia</translation>
  </message>
  <message>
   <location filename="planner/ui/places/offsets_form.py" />
   <source>Waters seen</source>
   <translation>Mareas vistas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/offsets_form.py" />
   <source>Fit offsets to these</source>
   <translation>Ajustar las diferencias</translation>
  </message>
  <message>
   <location filename="planner/ui/places/offsets_form.py" />
   <source>Take these offsets</source>
   <translation>Usar estas diferencias</translation>
  </message>
  <message>
   <location filename="planner/ui/places/offsets_form.py" />
   <source>Leave them</source>
   <translation>Dejarlas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/offsets_form.py" />
   <source>Keep the offsets that are there</source>
   <translation>Conservar las diferencias que hay</translation>
  </message>
  <message>
   <location filename="planner/ui/places/offsets_form.py" />
   <source>Three or more of each kind: times on the clock here, such as 2026-07-04 06:12, heights in {unit} above the datum of this place. They are kept for the check, too.</source>
   <translation>Tres o más de cada clase: horas en el reloj de aquí, como 2026-07-04 06:12, alturas en {unit} sobre el cero de referencia de este lugar; "high" es pleamar y "low", bajamar. Se guardan también para la comprobación.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/offsets_form.py" />
   <source>Keeping the waters</source>
   <translation>Guardando las mareas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/offsets_form.py" />
   <source>Fitting the offsets</source>
   <translation>Ajustando las diferencias</translation>
  </message>
  <message>
   <location filename="planner/ui/places/offsets_form.py" />
   <source>High or low</source>
   <translation>High o low</translation>
  </message>
  <message>
   <location filename="planner/ui/places/offsets_form.py" />
   <source>Or fit them to waters you saw here</source>
   <translation>O ajústelas a las mareas que vio aquí</translation>
  </message>
  <message>
   <location filename="planner/ui/places/offsets_form.py" />
   <source>choose a place</source>
   <translation>elija un lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/offsets_form.py" />
   <source>Taken over. Nothing is saved yet.</source>
   <translation>Copiadas. Todavía no se ha guardado nada.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/offsets_form.py" />
   <source>Choose the reference place first.</source>
   <translation>Elija primero el lugar de referencia.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>number</source>
   <translation>número</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>amplitude</source>
   <translation>amplitud</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>lag</source>
   <translation>desfase</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>speed</source>
   <translation>velocidad</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>other lag</source>
   <translation>otro desfase</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>other</source>
   <translation>otra</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>{constituents} understood. Columns of numbers: </source>
   <translation>Leído: {constituents}. Columnas de números: </translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>Read so, the water would move through about {metres:.1f} m ({feet:.1f} ft) from low to high at large springs. If the water there does not, choose another unit.</source>
   <translation>Leído así, el agua se movería alrededor de {metres:.1f} m ({feet:.1f} ft) de baja a alta en mareas vivas grandes. Si allí el agua no lo hace, elija otra unidad.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>centimetres</source>
   <translation>centímetros</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>Paste the table: names, amplitudes and phase lags, in whatever order they come.</source>
   <translation>Pegue la tabla: nombres, amplitudes y desfases, en el orden en que vengan.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>No constants understood. A line needs a name, an amplitude and a phase lag.</source>
   <translation>No se reconoce ninguna constante. Una línea necesita un nombre, una amplitud y un desfase.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>{found} constituents taken over{changed}. Nothing is saved yet.</source>
   <translation>{found} constituyentes copiados{changed}. Todavía no se ha guardado nada.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>Table of constants from an agency's page</source>
   <translation>Tabla de constantes de la página de un servicio hidrográfico</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>Name   Amplitude   Phase
M2     3.49        10.8
K1     2.74        276.8</source>
   <translation>Nombre Amplitud    Fase
M2     3.49        10.8
K1     2.74        276.8</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>choose: the page does not say</source>
   <translation>elija: la página no lo dice</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>Amplitudes on the &amp;page are in</source>
   <translation>Las amplitudes de la &amp;página están en</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>Phase &amp;lags are on the clock</source>
   <translation>Los desfa&amp;ses están en el reloj de</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>What was understood</source>
   <translation>Lo que se entendió</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>Take these constants</source>
   <translation>Usar estas constantes</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>Leave it</source>
   <translation>Dejarlo</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>Keep the constants that are there</source>
   <translation>Conservar las constantes que hay</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>Amplitude, {unit}</source>
   <translation>Amplitud, {unit}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>Amplitude</source>
   <translation>Amplitud</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>, amplitudes turned from {page} into {place}</source>
   <translation>, amplitudes pasadas de {page} a {place}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>Constituent</source>
   <translation>Constituyente</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>Phase lag, °</source>
   <translation>Desfase, °</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>Paste constants from an agency's page</source>
   <translation>Pegar constantes de la página de un servicio hidrográfico</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>Lags called G or Greenwich are on UTC; lags called local or kappa prime on the station's standard time. A wrong clock moves every tide by hours.</source>
   <translation>Los desfases llamados G o Greenwich están en UTC; los llamados local o kappa prima (kappa prime), en la hora estándar de la estación. Un reloj equivocado mueve todas las mareas varias horas.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>and {left_out} more lines</source>
   <translation>y {left_out} líneas más</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>⚠ Left out: {some}.</source>
   <translation>⚠ Omitido: {some}.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/paste_form.py" />
   <source>Choose the unit of the amplitudes first: the page does not say it</source>
   <translation>Elija primero la unidad de las amplitudes: la página no la dice</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_charts.py" />
   <source>Water of the coming month</source>
   <translation>El agua del mes que viene</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_charts.py" />
   <source>water above {datum}, {length}</source>
   <translation>agua sobre {datum}, {length}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_charts.py" />
   <source>{turns} high and low waters in {days} days, from {lowest} to {highest}; the table lists them</source>
   <translation>{turns} pleamares y bajamares en {days} días, de {lowest} a {highest}; la tabla las enumera</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_charts.py" />
   <source>{day_clock} {zone}: about {height}</source>
   <translation>{day_clock} {zone}: alrededor de {height}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_charts.py" />
   <source>Spots against the year's water</source>
   <translation>Los puestos frente al agua del año</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_charts.py" />
   <source>height above {datum}, {length}</source>
   <translation>altura sobre {datum}, {length}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_charts.py" />
   <source>The table tells each spot's depth and hours bare in a year</source>
   <translation>La tabla dice de cada puesto la profundidad y las horas sin cubrir al año</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_charts.py" />
   <source>- - ramp works above this</source>
   <translation>- - la rampa sirve sobre esto</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_charts.py" />
   <source>covered</source>
   <translation>cubierto</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_charts.py" />
   <source>bare {bare} a year</source>
   <translation>sin cubrir {bare} al año</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_charts.py" />
   <source>highest water</source>
   <translation>agua más alta</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_charts.py" />
   <source>lowest water</source>
   <translation>agua más baja</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_charts.py" />
   <source>ramp</source>
   <translation>rampa</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_editor.py" />
   <source>Save the place (Ctrl+S)</source>
   <translation>Guardar el lugar (Ctrl+S)</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_editor.py" />
   <source>Back to the place</source>
   <translation>Volver al lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_editor.py" />
   <source>What is not saved is kept as a draft</source>
   <translation>Lo que no está guardado se conserva como borrador</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_editor.py" />
   <source>Start from the saved file</source>
   <translation>Partir del archivo guardado</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_editor.py" />
   <source>Working out the water</source>
   <translation>Calculando el agua</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_editor.py" />
   <source>Saving the place</source>
   <translation>Guardando el lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_editor.py" />
   <source>Saved again: {name}.</source>
   <translation>Guardado otra vez: {name}.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_editor.py" />
   <source>the edit</source>
   <translation>la edición</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_editor.py" />
   <source>An edit of this place was not saved. It is shown below as you left it.</source>
   <translation>Una edición de este lugar no se guardó. Se muestra abajo tal como usted la dejó.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_editor.py" />
   <source>Reading the place</source>
   <translation>Leyendo el lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_editor.py" />
   <source>Saved: {name}.</source>
   <translation>Guardado: {name}.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_editor.py" />
   <source>Put right what is marked first: nothing is saved while there are problems</source>
   <translation>Corrija primero lo que está marcado: no se guarda nada mientras haya problemas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_editor.py" />
   <source>Undone: {name}.</source>
   <translation>Deshecho: {name}.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_editor.py" />
   <source>the edit of {name}</source>
   <translation>la edición de {name}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_head.py" />
   <source>Open this place</source>
   <translation>Abrir este lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_head.py" />
   <source>Show this place in every view</source>
   <translation>Mostrar este lugar en todas las vistas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_head.py" />
   <source>Copy to my places</source>
   <translation>Copiar a mis lugares</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_head.py" />
   <source>Put a copy among your own places</source>
   <translation>Poner una copia entre sus propios lugares</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_head.py" />
   <source>Edit</source>
   <translation>Editar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_head.py" />
   <source>Change name, water, spots and more here</source>
   <translation>Cambiar aquí el nombre, el agua, los puestos y más</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_head.py" />
   <source>Edit the file</source>
   <translation>Editar el archivo</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_head.py" />
   <source>Open the place file in your text editor</source>
   <translation>Abrir el archivo de lugar en su editor de texto</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_head.py" />
   <source>Read again</source>
   <translation>Leer otra vez</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_head.py" />
   <source>Read the place file anew</source>
   <translation>Leer de nuevo el archivo de lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_head.py" />
   <source>This place cannot be used yet</source>
   <translation>Este lugar todavía no se puede usar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_head.py" />
   <source>⚠ {problems} in {name}</source>
   <translation>⚠ {problems} en {name}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_head.py" />
   <source>Open in every view now</source>
   <translation>Abierto ahora en todas las vistas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_head.py" />
   <source>Every problem of the file is listed. Put them right, then read it again.</source>
   <translation>Están todos los problemas del archivo. Corríjalos y después léalo otra vez.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_head.py" />
   <source>Problems of the place file</source>
   <translation>Problemas del archivo de lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_list.py" />
   <source>A published station</source>
   <translation>Una estación publicada</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_list.py" />
   <source>Your place</source>
   <translation>Su lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_list.py" />
   <source>Search places</source>
   <translation>Buscar lugares</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_list.py" />
   <source>Places</source>
   <translation>Lugares</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_list.py" />
   <source>Your places</source>
   <translation>Sus lugares</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_list.py" />
   <source>none yet</source>
   <translation>aún no hay</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_list.py" />
   <source>Samples</source>
   <translation>Ejemplos</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_list.py" />
   <source>An invented sample</source>
   <translation>Un ejemplo inventado</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_list.py" />
   <source>Your place, marked as invented</source>
   <translation>Su lugar, marcado como inventado</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_list.py" />
   <source>Elsewhere</source>
   <translation>En otra parte</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_list.py" />
   <source>open</source>
   <translation>abierto</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_list.py" />
   <source>invented</source>
   <translation>inventado</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_panel.py" />
   <source>The coming {month_days} days on the clock of {zone}. Point at the curve to read it; drag along it, and zoom with Ctrl and the wheel.</source>
   <translation>Los próximos {month_days} días en el reloj de {zone}. Apunte a la curva para leerla; arrastre para recorrerla, y acerque o aleje con Ctrl y la rueda.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_panel.py" />
   <source>What is known of the place</source>
   <translation>Lo que se sabe del lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_panel.py" />
   <source>Any dates</source>
   <translation>Cualquier día</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_panel.py" />
   <source>Facts and water of the place</source>
   <translation>Datos y agua del lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_panel.py" />
   <source>Spots of the place</source>
   <translation>Puestos del lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_panel.py" />
   <source>Each box is a trap on its ground. The band is what the coming year's astronomical tide reaches; wind and pressure go beyond it. Drag the picture sideways when there are more.</source>
   <translation>Cada caja es una nasa en su fondo. La banda es lo que alcanza la marea astronómica del año que viene; el viento y la presión llevan el agua más allá. Arrastre la imagen de lado cuando haya más.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_panel.py" />
   <source>Tidal constituents</source>
   <translation>Constituyentes de la marea</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_panel.py" />
   <source>Rules and closures</source>
   <translation>Normas y vedas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_panel.py" />
   <source>No spots entered in the place file yet. </source>
   <translation>Todavía no hay puestos en el archivo de lugar. </translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_panel.py" />
   <source>Spots</source>
   <translation>Puestos</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_panel.py" />
   <source>Constants</source>
   <translation>Constantes</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_panel.py" />
   <source>High and low waters of the coming month</source>
   <translation>Pleamares y bajamares del mes que viene</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_panel.py" />
   <source>The constants of the reference place, {name}.</source>
   <translation>Las constantes del lugar de referencia, {name}.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_panel.py" />
   <source>Amplitudes and phase lags as the place file gives them, largest first.</source>
   <translation>Amplitudes y desfases como los da el archivo de lugar, de mayor a menor.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_sections.py" />
   <source>Depth, {unit}</source>
   <translation>Prof., {unit}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_sections.py" />
   <source>Trap height, {unit}</source>
   <translation>Altura de nasa, {unit}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_sections.py" />
   <source>Latitude, °</source>
   <translation>Latitud, °</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_sections.py" />
   <source>Longitude, °</source>
   <translation>Longitud, °</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_sections.py" />
   <source>&amp;Ramp works down to a water level of</source>
   <translation>La &amp;rampa sirve desde un nivel del agua de</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_sections.py" />
   <source>2026: when the agency issued them</source>
   <translation>2026: cuándo las publicó el servicio</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_sections.py" />
   <source>La&amp;titude, degrees</source>
   <translation>La&amp;titud, grados</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_sections.py" />
   <source>Hei&amp;ghts of this place in</source>
   <translation>Altu&amp;ras de este lugar en</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_sections.py" />
   <source>&amp;Datum (what zero means)</source>
   <translation>&amp;Cero de referencia (dónde está el cero)</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_sections.py" />
   <source>So&amp;urce of the water</source>
   <translation>F&amp;uente del agua</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_sections.py" />
   <source>State of the &amp;constants</source>
   <translation>E&amp;stado de las constantes</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_sections.py" />
   <source>Add a spot</source>
   <translation>Añadir puesto</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_sections.py" />
   <source>empty: launching never waits for water</source>
   <translation>vacío: para botar nunca se espera al agua</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_sections.py" />
   <source>Charted depths in {unit} below the datum; a bank that dries has a negative one. Crab traps stand about 0.3 to 0.6 m (1 to 2 ft) high (common practice). Positions in degrees, north and east positive, are only for the waypoints; they may stay empty.</source>
   <translation>Sondas en {unit} bajo el cero de referencia; un bajo que queda en seco la tiene negativa. Las nasas de cangrejo suelen medir de 0,3 a 0,6 m (1 a 2 ft) de alto (práctica común). Las posiciones, en grados, positivas al norte y al este, son solo para los puntos GPX; pueden quedar vacías.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_sections.py" />
   <source>All heights of the place are in this one unit: mean level, amplitudes, depths, ramp. Changing it here changes what the numbers mean, not the numbers.</source>
   <translation>Todas las alturas del lugar están en esta única unidad: nivel medio, amplitudes, profundidades, rampa. Si la cambia aquí, cambia lo que significan los números, no los números.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_sections.py" />
   <source>Slac&amp;k after high water</source>
   <translation>Es&amp;toa tras la pleamar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_sections.py" />
   <source>Slack after &amp;low water</source>
   <translation>Estoa tras la &amp;bajamar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_sections.py" />
   <source>as you watched it; negative is before; may stay empty</source>
   <translation>según lo que vio; negativo es antes; puede quedar vacío</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_sections.py" />
   <source>Water temperature in {name}, degrees Celsius</source>
   <translation>Temperatura del agua en {name}, grados Celsius</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_sections.py" />
   <source>Water temperature, °C</source>
   <translation>Temperatura del agua, °C</translation>
  </message>
  <message>
   <location filename="planner/ui/places/place_sections.py" />
   <source>Monthly means of the water in degrees Celsius: all twelve, or none. Without them the forecast goes by a typical year and is less sure.</source>
   <translation>Medias mensuales del agua en grados Celsius: las doce, o ninguna. Sin ellas el pronóstico se guía por un año típico y es menos seguro.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>mean of each day's lowest water</source>
   <translation>media de la bajamar más baja de cada día</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>mean low water</source>
   <translation>bajamar media</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>lowest astronomical tide</source>
   <translation>bajamar astronómica más baja</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>mean sea level</source>
   <translation>nivel medio del mar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>mean high water</source>
   <translation>pleamar media</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>mean of each day's highest water</source>
   <translation>media de la pleamar más alta de cada día</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>{latitude_deg:.3f}° {north}, {longitude_deg:.3f}° {east}</source>
   <translation>{latitude_deg:.3f}° {north}, {longitude_deg:.3f}° {east}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>{key} ({tzname} on {day}, {from_utc})</source>
   <translation>{key} ({tzname} el {day}, {from_utc})</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>{rule}. The rule “{other}” would change a level by at most {shown}</source>
   <translation>{rule}. La regla «{other}» cambiaría un nivel en {shown} como mucho</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>{constituents}, phase lags on {reference}</source>
   <translation>{constituents}, desfases en {reference}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>{name}, by its time of day and height: high water {high}, low water {low}</source>
   <translation>{name}, según su hora del día y su altura: pleamar {high}, bajamar {low}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>not given</source>
   <translation>no indicado</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>{minutes} min earlier</source>
   <translation>{minutes} min antes</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>{bare}; ground dry {dry}</source>
   <translation>{bare}; fondo en seco {dry}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>{hours:,.0f} h</source>
   <translation>{hours:,.0f} h</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>The ramp works down to {height}</source>
   <translation>La rampa sirve con agua de {height} o más</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>{where}: too low for about {hours} of the coming year.</source>
   <translation>{where}: agua demasiado baja durante {hours}, más o menos, del año que viene.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>{key} ({name} on {day})</source>
   <translation>{key} ({name} el {day})</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>yearly: held at their mid-year values, as agency tables do</source>
   <translation>anuales: fijos en su valor de mitad de año, como en las tablas oficiales</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>continuous: worked out anew for every instant</source>
   <translation>continuos: calculados de nuevo para cada instante</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>{apart:.0f} cm</source>
   <translation>{apart:.0f} cm</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>{apart:.1f} ft</source>
   <translation>{apart:.1f} ft</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>{moved}. Only high and low waters are known; the curve between them is drawn</source>
   <translation>{moved}. Solo se conocen las pleamares y bajamares; la curva entre ellas es dibujada</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>{name}: high water {high}, low water {low}</source>
   <translation>{name}: pleamar {high}, bajamar {low}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>{constants_state}. Agencies renew constants: compare now and then</source>
   <translation>{constants_state}. Los servicios hidrográficos renuevan las constantes: compárelas de vez en cuando</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>at the same time</source>
   <translation>a la misma hora</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>{minutes} min later</source>
   <translation>{minutes} min después</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>Period</source>
   <translation>Período</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>constant</source>
   <translation>constante</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>{hours:.2f} h</source>
   <translation>{hours:.2f} h</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>{hours:.1f} days</source>
   <translation>{hours:.1f} días</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>Trap, {unit}</source>
   <translation>Nasa, {unit}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>Over the trap at lowest</source>
   <translation>Mínimo sobre la nasa</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>Bare in a year</source>
   <translation>Sin cubrir al año</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>never</source>
   <translation>nunca</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>under 1 h</source>
   <translation>menos de 1 h</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>No ramp level entered: launching never waits for water in the plans.</source>
   <translation>No hay nivel de rampa anotado: en los planes, para botar nunca se espera al agua.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>{where}: always, in the coming year's astronomical tide.</source>
   <translation>{where}: siempre, con la marea astronómica del año que viene.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>Position</source>
   <translation>Posición</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>Clock</source>
   <translation>Reloj</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>Heights count from</source>
   <translation>Alturas desde</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>Water comes from</source>
   <translation>El agua viene de</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>Source</source>
   <translation>Fuente</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>State of the constants</source>
   <translation>Estado de las constantes</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>Node factors</source>
   <translation>Factores nodales</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>Tide</source>
   <translation>Marea</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>Range</source>
   <translation>Carrera</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>{mean} on average, springs {springs}, neaps {neaps}</source>
   <translation>{mean} de media, mareas vivas {springs}, mareas muertas {neaps}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>Highest and lowest</source>
   <translation>Máximo y mínimo</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>{highest} and {lowest} in the 19 years from {first_year}</source>
   <translation>{highest} y {lowest} en los 19 años desde {first_year}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>{metres_to:.3f}</source>
   <translation>{metres_to:.3f}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>{phase_lag_deg:.1f}</source>
   <translation>{phase_lag_deg:.1f}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>the water never turns here</source>
   <translation>aquí no hay pleamares ni bajamares</translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source> to </source>
   <translation> a </translation>
  </message>
  <message>
   <location filename="planner/ui/places/places_text.py" />
   <source>Slack water</source>
   <translation>Estoa</translation>
  </message>
  <message>
   <location filename="planner/ui/places/record_form.py" />
   <source>{constants} constituents and the mean level taken over from {name}; their lags are on UTC. The datum is now the zero of that record. Nothing is saved yet.</source>
   <translation>{constants} constituyentes y el nivel medio copiados de {name}; sus desfases están en UTC. El cero de referencia es ahora el cero de ese registro. Todavía no se ha guardado nada.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/record_form.py" />
   <source>Heights in the &amp;file are in</source>
   <translation>Las alturas del archi&amp;vo están en</translation>
  </message>
  <message>
   <location filename="planner/ui/places/record_form.py" />
   <source>Times &amp;without an offset are on</source>
   <translation>Las horas &amp;sin diferencia horaria están en</translation>
  </message>
  <message>
   <location filename="planner/ui/places/record_form.py" />
   <source>Choose the file…</source>
   <translation>Elegir archivo…</translation>
  </message>
  <message>
   <location filename="planner/ui/places/record_form.py" />
   <source>A table of observed levels, CSV</source>
   <translation>Una tabla de niveles observados, CSV</translation>
  </message>
  <message>
   <location filename="planner/ui/places/record_form.py" />
   <source>Constants found in the record</source>
   <translation>Constantes halladas en el registro del mareógrafo</translation>
  </message>
  <message>
   <location filename="planner/ui/places/record_form.py" />
   <source>Observed levels</source>
   <translation>Niveles observados</translation>
  </message>
  <message>
   <location filename="planner/ui/places/record_form.py" />
   <source>Tables (*.csv *.txt)</source>
   <translation>Tablas (*.csv *.txt)</translation>
  </message>
  <message>
   <location filename="planner/ui/places/record_form.py" />
   <source>Give the latitude of the place first, on the tab Place: the fit needs it.</source>
   <translation>Escriba primero la latitud del lugar, en la pestaña Lugar: el ajuste la necesita.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/record_form.py" />
   <source>Fitting the tide in the record</source>
   <translation>Ajustando la marea al registro del mareógrafo</translation>
  </message>
  <message>
   <location filename="planner/ui/places/record_form.py" />
   <source>Use</source>
   <translation>Usar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/record_form.py" />
   <source>Fit constants to a gauge's record</source>
   <translation>Ajustar constantes al registro de un mareógrafo</translation>
  </message>
  <message>
   <location filename="planner/ui/places/record_form.py" />
   <source>A CSV file with the header time,height: levels every hour or every six minutes, 15 days at least, best a whole year. Gaps may stay empty.</source>
   <translation>Un archivo CSV con el encabezado time,height: niveles cada hora o cada seis minutos, al menos 15 días, mejor un año entero. Los huecos pueden quedar vacíos.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/record_form.py" />
   <source>the clock of {zone}, with its summer time</source>
   <translation>el reloj de {zone}, con su horario de verano</translation>
  </message>
  <message>
   <location filename="planner/ui/places/record_form.py" />
   <source>and {lines} more lines like these</source>
   <translation>y {lines} líneas más como estas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/record_form.py" />
   <source>Amplitude, {place_unit}</source>
   <translation>Amplitud, {place_unit}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/record_form.py" />
   <source>Fitting the tide in {name}…</source>
   <translation>Ajustando la marea de {name}…</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_section.py" />
   <source>the agency's leaflet, its page, its office</source>
   <translation>el folleto de la autoridad pesquera, su página, su oficina</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_section.py" />
   <source>empty: no limit entered</source>
   <translation>vacío: sin límite anotado</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_section.py" />
   <source>Checked today</source>
   <translation>Comprobadas hoy</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_section.py" />
   <source>You have read the rules today</source>
   <translation>Usted ha leído hoy las normas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_section.py" />
   <source>Closed periods</source>
   <translation>Vedas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_section.py" />
   <source>Add a closed period</source>
   <translation>Añadir veda</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_section.py" />
   <source>Add a rule</source>
   <translation>Añadir norma</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_section.py" />
   <source>Rules chec&amp;ked on</source>
   <translation>Normas compro&amp;badas el</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_section.py" />
   <source>&amp;Where they were checked</source>
   <translation>Dó&amp;nde se comprobaron</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_section.py" />
   <source>&amp;Most traps allowed</source>
   <translation>&amp;Máximo de nasas permitidas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_section.py" />
   <source>Longest &amp;soak allowed, hours</source>
   <translation>Tiempo máximo en el agua, &amp;horas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_section.py" />
   <source>Enter when you checked the rules, so that you are told when that is too old.</source>
   <translation>Anote cuándo comprobó las normas, para que se le avise cuando haga demasiado tiempo.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_section.py" />
   <source>From</source>
   <translation>Desde</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_section.py" />
   <source>To</source>
   <translation>Hasta</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_section.py" />
   <source>Only on</source>
   <translation>Solo los</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_section.py" />
   <source>Heading</source>
   <translation>Apartado</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_section.py" />
   <source>What the rule says</source>
   <translation>Lo que dice la norma</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_section.py" />
   <source>No trap in the water</source>
   <translation>Ninguna nasa en el agua</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_section.py" />
   <source>From and to as dates, 2026-07-04 for once or 07-04 for every year (over New Year if need be); days of the week such as Sun, Wed, alone or within the period.</source>
   <translation>Desde y hasta como fechas: 2026-07-04 para una sola vez o 07-04 para todos los años (pasando por Año Nuevo si hace falta); días de la semana en inglés, como Sun, Wed, solos o dentro del período.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_section.py" />
   <source>Every other rule</source>
   <translation>Todas las demás normas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_section.py" />
   <source>Agencies regulate what these headings name; the program knows no rule itself. What you write becomes your checklist; a heading without words is left out.</source>
   <translation>Las autoridades pesqueras regulan lo que nombran estos apartados; el programa no conoce por sí mismo ninguna norma. Lo que usted escribe pasa a ser su lista de comprobación; un apartado sin texto se omite.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_section.py" />
   <source>That day is still to come: correct it, and check with the agency.</source>
   <translation>Ese día aún no ha llegado: corríjalo y consulte a la autoridad pesquera.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_section.py" />
   <source>Checked {months} months ago, longer than a season: check with the agency.</source>
   <translation>Comprobadas hace {months} meses, más de una temporada: consulte a la autoridad pesquera.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_text.py" />
   <source>{day.day} {day:%b}</source>
   <translation>{day.day} {day:%b}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_text.py" />
   <source>on {first}</source>
   <translation>el {first}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_text.py" />
   <source>from {first} to {last}</source>
   <translation>del {first} al {last}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_text.py" />
   <source> every year</source>
   <translation> todos los años</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_text.py" />
   <source>on {days} {span}{every}</source>
   <translation>{days} {span}{every}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_text.py" />
   <source>No date entered for when you checked the rules here.</source>
   <translation>No hay fecha de cuándo comprobó usted las normas de aquí.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_text.py" />
   <source>{months} months ago</source>
   <translation>hace {months} meses</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_text.py" />
   <source>Rules last checked {day} {year}, {ago}{where}.</source>
   <translation>Normas comprobadas por última vez el {day} {year}, {ago}{where}.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_text.py" />
   <source>A soak of at most {max_soak_h:g} h.</source>
   <translation>Tiempo en el agua de {max_soak_h:g} h como máximo.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_text.py" />
   <source>Closed {closure}: {reason}.</source>
   <translation>Veda {closure}: {reason}.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_text.py" />
   <source>on {days}</source>
   <translation>{days}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/rules_text.py" />
   <source>always</source>
   <translation>siempre</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_panel.py" />
   <source>Work out</source>
   <translation>Calcular</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_panel.py" />
   <source>Every high and low water of these days</source>
   <translation>Todas las pleamares y bajamares de estos días</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_panel.py" />
   <source>Save as a table…</source>
   <translation>Guardar tabla…</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_panel.py" />
   <source>A CSV file for any spreadsheet</source>
   <translation>Un archivo CSV para cualquier hoja de cálculo</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_panel.py" />
   <source>Stop</source>
   <translation>Parar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_panel.py" />
   <source>Give up what is being worked out</source>
   <translation>Abandonar lo que se está calculando</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_panel.py" />
   <source>How much is worked out</source>
   <translation>Cuánto va calculado</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_panel.py" />
   <source>When the water begins and stops being high enough to launch</source>
   <translation>Cuándo hay y cuándo deja de haber agua para botar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_panel.py" />
   <source>By the place's own lags after high and low water: an estimate</source>
   <translation>Según los retrasos propios del lugar tras la pleamar y la bajamar: una estimación</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_panel.py" />
   <source>High and low waters of the days</source>
   <translation>Pleamares y bajamares de los días</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_panel.py" />
   <source>Working out high and low waters</source>
   <translation>Calculando pleamares y bajamares</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_panel.py" />
   <source>Save high and low waters</source>
   <translation>Guardar pleamares y bajamares</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_panel.py" />
   <source>Saving high and low waters</source>
   <translation>Guardando pleamares y bajamares</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_panel.py" />
   <source>F&amp;rom</source>
   <translation>&amp;Desde</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_panel.py" />
   <source>&amp;To</source>
   <translation>&amp;Hasta</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_panel.py" />
   <source>Ra&amp;mp</source>
   <translation>Ra&amp;mpa</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_panel.py" />
   <source>S&amp;lack</source>
   <translation>Es&amp;toa</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_panel.py" />
   <source>Pick the days and press Work out: each high and low water will stand here, with its time and height.</source>
   <translation>Elija los días y pulse Calcular: aquí estará cada pleamar y bajamar, con su hora y su altura.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_panel.py" />
   <source>High and low waters of any days from {first} to {last}: next weekend, a year for the wall, or a century; with ramp and slack, where the place has them. Not for navigation.</source>
   <translation>Pleamares y bajamares de los días que quiera de {first} a {last}: el fin de semana próximo, un año para la pared, o un siglo; con rampa y estoa, si el lugar las tiene. No sirve para navegar.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_panel.py" />
   <source>Saved as {name}.</source>
   <translation>Guardado como {name}.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_panel.py" />
   <source>Stopped.</source>
   <translation>Parado.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_rows.py" />
   <source>The ramp works down to {level}: at no hour of these days.</source>
   <translation>La rampa sirve con agua de {level} o más: a ninguna hora de estos días.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_rows.py" />
   <source>The ramp works down to {level}: at any hour of these days.</source>
   <translation>La rampa sirve con agua de {level} o más: a cualquier hora de estos días.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_rows.py" />
   <source>The last day, {last}, is before the first, {first}.</source>
   <translation>El último día, {last}, es anterior al primero, {first}.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_rows.py" />
   <source>{highs} and {lows} in {days}.</source>
   <translation>{highs} y {lows} en {days}.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_rows.py" />
   <source>No high or low water in {days}.</source>
   <translation>Ninguna pleamar ni bajamar en {days}.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_rows.py" />
   <source>Highest</source>
   <translation>La más alta</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_rows.py" />
   <source>Lowest</source>
   <translation>La más baja</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_rows.py" />
   <source>{which}: {height}, {when}.</source>
   <translation>{which}: {height}, {when}.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_rows.py" />
   <source>high waters</source>
   <translation>pleamares</translation>
  </message>
  <message>
   <location filename="planner/ui/places/span_rows.py" />
   <source>low waters</source>
   <translation>bajamares</translation>
  </message>
  <message>
   <location filename="planner/ui/places/tabled_form.py" />
   <source>time</source>
   <translation>hora</translation>
  </message>
  <message>
   <location filename="planner/ui/places/tabled_form.py" />
   <source>Time: by the clock time of high or low water at the reference place</source>
   <translation>Hora: según la hora de reloj de la pleamar o bajamar en el lugar de referencia</translation>
  </message>
  <message>
   <location filename="planner/ui/places/tabled_form.py" />
   <source>height</source>
   <translation>altura</translation>
  </message>
  <message>
   <location filename="planner/ui/places/tabled_form.py" />
   <source>Height: by the height of that water there, at springs and at neaps</source>
   <translation>Altura: según la altura de esa pleamar o bajamar allí, en mareas vivas y en mareas muertas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/tabled_form.py" />
   <source>Clock of the table</source>
   <translation>Reloj de la tabla</translation>
  </message>
  <message>
   <location filename="planner/ui/places/tabled_form.py" />
   <source>Differences</source>
   <translation>Diferencias</translation>
  </message>
  <message>
   <location filename="planner/ui/places/tabled_form.py" />
   <source>there at</source>
   <translation>allí a las</translation>
  </message>
  <message>
   <location filename="planner/ui/places/tabled_form.py" />
   <source>minutes later</source>
   <translation>minutos después</translation>
  </message>
  <message>
   <location filename="planner/ui/places/tabled_form.py" />
   <source>height there</source>
   <translation>altura allí</translation>
  </message>
  <message>
   <location filename="planner/ui/places/tabled_form.py" />
   <source>plus</source>
   <translation>más</translation>
  </message>
  <message>
   <location filename="planner/ui/places/tabled_form.py" />
   <source>UTC, or such as UTC+01:00</source>
   <translation>UTC, o como UTC+01:00</translation>
  </message>
  <message>
   <location filename="planner/ui/places/tabled_form.py" />
   <source>Clock of the &amp;table, never summer time</source>
   <translation>Reloj de la &amp;tabla, nunca horario de verano</translation>
  </message>
  <message>
   <location filename="planner/ui/places/tabled_form.py" />
   <source>Each time holds twelve hours later too. Between the two columns a difference goes in a straight line. Earlier and lower are written with a minus.</source>
   <translation>Cada hora vale también doce horas después. Entre las dos columnas, la diferencia va en línea recta. Antes y más bajo se escriben con signo menos.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/tabled_form.py" />
   <source>{water}, column {column}: {head}</source>
   <translation>{water}, columna {column}: {head}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/tabled_form.py" />
   <source>{water}, {one} in column {column}, {head}</source>
   <translation>{water}, {one} en la columna {column}, {head}</translation>
  </message>
  <message>
   <location filename="planner/ui/places/view.py" />
   <source>New place</source>
   <translation>Lugar nuevo</translation>
  </message>
  <message>
   <location filename="planner/ui/places/view.py" />
   <source>Write the file of a new place to fill in</source>
   <translation>Escribir el archivo de un lugar nuevo para rellenarlo</translation>
  </message>
  <message>
   <location filename="planner/ui/places/view.py" />
   <source>Open place file…</source>
   <translation>Abrir archivo de lugar…</translation>
  </message>
  <message>
   <location filename="planner/ui/places/view.py" />
   <source>Open a place file from anywhere</source>
   <translation>Abrir un archivo de lugar de cualquier carpeta</translation>
  </message>
  <message>
   <location filename="planner/ui/places/view.py" />
   <source>Show the folder</source>
   <translation>Ver carpeta</translation>
  </message>
  <message>
   <location filename="planner/ui/places/view.py" />
   <source>Show your own place files</source>
   <translation>Mostrar los archivos de sus propios lugares</translation>
  </message>
  <message>
   <location filename="planner/ui/places/view.py" />
   <source>Reading the place book</source>
   <translation>Leyendo el libro de lugares</translation>
  </message>
  <message>
   <location filename="planner/ui/places/view.py" />
   <source>Working out the water there</source>
   <translation>Calculando el agua de allí</translation>
  </message>
  <message>
   <location filename="planner/ui/places/view.py" />
   <source>Copying the place</source>
   <translation>Copiando el lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/view.py" />
   <source>Open a place file</source>
   <translation>Abrir un archivo de lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/view.py" />
   <source>Choose a place on the left to see its water, its spots and its rules.</source>
   <translation>Elija un lugar a la izquierda para ver su agua, sus puestos y sus normas.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/view.py" />
   <source>Place book</source>
   <translation>Libro de lugares</translation>
  </message>
  <message>
   <location filename="planner/ui/places/view.py" />
   <source>This is your copy: change what you like. The sample stays as it was.</source>
   <translation>Esta es su copia: cambie lo que quiera. El ejemplo quedó como estaba.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/view.py" />
   <source>The folder {folder} cannot be made ({strerror}); allow that, or name another in the variable FULLSHELL_HOME.</source>
   <translation>No se puede crear la carpeta {folder} ({strerror}); permítalo o indique otra en la variable FULLSHELL_HOME.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/water_section.py" />
   <source>held at mid-year, as agency tables do</source>
   <translation>fijos a mitad de año, como en las tablas oficiales</translation>
  </message>
  <message>
   <location filename="planner/ui/places/water_section.py" />
   <source>worked out for every instant</source>
   <translation>calculados para cada instante</translation>
  </message>
  <message>
   <location filename="planner/ui/places/water_section.py" />
   <source>&amp;Mean level</source>
   <translation>&amp;Nivel medio</translation>
  </message>
  <message>
   <location filename="planner/ui/places/water_section.py" />
   <source>paste or add constants, or choose offsets from another place</source>
   <translation>pegue o añada constantes, o elija diferencias con otro lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/water_section.py" />
   <source>&amp;Constants of a station here</source>
   <translation>&amp;Constantes de una estación de aquí</translation>
  </message>
  <message>
   <location filename="planner/ui/places/water_section.py" />
   <source>&amp;Offsets from another place</source>
   <translation>Di&amp;ferencias con otro lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/water_section.py" />
   <source>You have amplitudes and phase lags for this place, from an agency or a gauge</source>
   <translation>Tiene amplitudes y desfases de este lugar, de un organismo o de un mareógrafo</translation>
  </message>
  <message>
   <location filename="planner/ui/places/water_section.py" />
   <source>You know how much later and higher the water is here than at another place</source>
   <translation>Sabe cuánto más tarde y más alta es aquí el agua que en otro lugar</translation>
  </message>
  <message>
   <location filename="planner/ui/places/water_section.py" />
   <source>0.26: mean sea level above the datum</source>
   <translation>0.26: nivel medio del mar sobre el cero de referencia</translation>
  </message>
  <message>
   <location filename="planner/ui/places/water_section.py" />
   <source>As the table says: GMT, UTC or local. The wrong one shifts every tide by hours</source>
   <translation>Como diga la tabla: GMT, UTC o local. El equivocado desplaza horas cada marea</translation>
  </message>
  <message>
   <location filename="planner/ui/places/water_section.py" />
   <source>Slow changes over 18.6 years. Agencies' own tables hold them through each year</source>
   <translation>Cambios lentos en 18,6 años. Las tablas oficiales los mantienen fijos cada año</translation>
  </message>
  <message>
   <location filename="planner/ui/places/water_section.py" />
   <source>&amp;Node factors</source>
   <translation>Factores no&amp;dales</translation>
  </message>
  <message>
   <location filename="planner/ui/places/water_section.py" />
   <source>Constituents</source>
   <translation>Constituyentes</translation>
  </message>
  <message>
   <location filename="planner/ui/places/water_section.py" />
   <source>Add a constituent</source>
   <translation>Añadir constituyente</translation>
  </message>
  <message>
   <location filename="planner/ui/places/water_section.py" />
   <source>Paste from an agency's page…</source>
   <translation>Pegar de una página oficial…</translation>
  </message>
  <message>
   <location filename="planner/ui/places/water_section.py" />
   <source>Put a whole table of constants in at once</source>
   <translation>Poner de una vez una tabla entera de constantes</translation>
  </message>
  <message>
   <location filename="planner/ui/places/water_section.py" />
   <source>Fit to a gauge's record…</source>
   <translation>Ajustar a un mareógrafo…</translation>
  </message>
  <message>
   <location filename="planner/ui/places/water_section.py" />
   <source>Work constants out from hourly or six-minute levels in a CSV file</source>
   <translation>Calcular constantes con niveles horarios o de cada seis minutos en un archivo CSV</translation>
  </message>
  <message>
   <location filename="planner/ui/places/water_section.py" />
   <source>in {unit}: mean sea level less the datum</source>
   <translation>en {unit}: nivel medio del mar menos el cero de referencia</translation>
  </message>
  <message>
   <location filename="planner/ui/places/water_section.py" />
   <source>UTC (Greenwich)</source>
   <translation>UTC (Greenwich)</translation>
  </message>
  <message>
   <location filename="planner/ui/places/water_section.py" />
   <source>fill in both columns</source>
   <translation>rellene las dos columnas</translation>
  </message>
  <message>
   <location filename="planner/ui/places/water_section.py" />
   <source>minutes</source>
   <translation>minutos</translation>
  </message>
  <message>
   <location filename="planner/ui/places/water_section.py" />
   <source>times</source>
   <translation>por</translation>
  </message>
  <message>
   <location filename="planner/ui/places/water_section.py" />
   <source>No constants yet. Copy the table of harmonic constituents from the agency's page of the nearest station and paste it here.</source>
   <translation>Todavía no hay constantes. Copie la tabla de constituyentes armónicos de la página del servicio hidrográfico, de la estación más cercana, y péguela aquí.</translation>
  </message>
  <message>
   <location filename="planner/ui/places/water_section.py" />
   <source>{clock}, the standard time here</source>
   <translation>{clock}, la hora estándar de aquí</translation>
  </message>
  <message>
   <location filename="planner/ui/settings.py" />
   <source>The file of your settings is damaged, so Fullshell starts with its own settings. </source>
   <translation>El archivo de sus ajustes está dañado, así que Fullshell empieza con los suyos. </translation>
  </message>
  <message>
   <location filename="planner/ui/settings.py" />
   <source>{said}Choose colours and units anew in the View menu; your places and log are safe.</source>
   <translation>{said}Elija de nuevo los colores y las unidades en el menú Ver; sus lugares y su registro están a salvo.</translation>
  </message>
  <message>
   <location filename="planner/ui/settings.py" />
   <source>Of your settings {names} could not be used and went back to what Fullshell begins with. Choose anew in the View menu where you want it otherwise.</source>
   <translation>De sus ajustes, {names} no se pudieron usar y volvieron a lo que trae Fullshell. Elíjalos de nuevo en el menú Ver donde los quiera de otro modo.</translation>
  </message>
  <message>
   <location filename="planner/ui/settings.py" />
   <source>The damaged file was set aside as {name}. </source>
   <translation>El archivo dañado se apartó con el nombre {name}. </translation>
  </message>
  <message>
   <location filename="planner/ui/settings.py" />
   <source>Your settings could not be read ({strerror}), so Fullshell starts with its own. Allow reading of {path}, or move it away.</source>
   <translation>No se pudieron leer sus ajustes ({strerror}), así que Fullshell empieza con los suyos. Permita leer {path}, o muévalo a otro sitio.</translation>
  </message>
  <message>
   <location filename="planner/ui/settings.py" />
   <source>{said}Delete {path} when this comes again.</source>
   <translation>{said}Borre {path} si esto vuelve a ocurrir.</translation>
  </message>
  <message>
   <location filename="planner/ui/sources.py" />
   <source>Places ({listed})</source>
   <translation>Lugares ({listed})</translation>
  </message>
  <message>
   <location filename="planner/ui/status_line.py" />
   <source>Working</source>
   <translation>Trabajando</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/calendar_lanes.py" />
   <source>{day:%a} {day.day}</source>
   <translation>{day:%a} {day.day}</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/calendar_lanes.py" />
   <source>{begin:%B} {begin.year}</source>
   <translation>{begin:%B} {begin.year}</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/calendar_lanes.py" />
   <source>{begin:%b} {begin.year}</source>
   <translation>{begin:%b} {begin.year}</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/calendar_lanes.py" />
   <source>{begin:%b}</source>
   <translation>{begin:%b}</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>season and water</source>
   <translation>época del año y agua</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>recent trips</source>
   <translation>salidas recientes</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>moon {way}, {lit:.0%} lit</source>
   <translation>luna {way}, {lit:.0%} iluminada</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>Against the year's average ({yearly}), in light crabs of 100: {parts}.</source>
   <translation>Frente a la media del año ({yearly}), en cangrejos vacíos de cada 100: {parts}.</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>waxing</source>
   <translation>creciente</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>waning</source>
   <translation>menguante</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>{day} {year}: {mean} full ({range}), light crabs {light}</source>
   <translation>{day} {year}: {mean} llenos ({range}), cangrejos vacíos: {light}</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>water {range}</source>
   <translation>agua de {range}</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>Logged {trip}: {outcome}.</source>
   <translation>Anotada {trip}: {outcome}.</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>No difference from the year's average.</source>
   <translation>Ninguna diferencia con la media del año.</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>{keepers} keepers from {hauls} hauls</source>
   <translation>{keepers} de talla en {hauls} recogidas</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>{light} of {judged} judged were light</source>
   <translation>{light} vacíos de {judged} examinados</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>fullness not judged</source>
   <translation>llenado sin examinar</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>{day} {year}: not worked out yet.</source>
   <translation>{day} {year}: todavía sin calcular.</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>{plan_name}: set {set_at}, haul {haul_at}, {count} full keepers.</source>
   <translation>{plan_name}: calar {set_at}, recoger {haul_at}, {count} llenos de talla.</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>Not free: {why_not_free}.</source>
   <translation>No está libre: {why_not_free}.</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>{label} {points:+.1f}</source>
   <translation>{label} {points:+.1f}</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/legend.py" />
   <source>filling</source>
   <comment>middle of the scale of fullness</comment>
   <translation>a medias</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/legend.py" />
   <source>Legend: pale is light, middle is filling, deep blue is full; hatched is unsure; logged trips are open circles when light, half filled when mixed, filled when full; small ones at the chosen day are past trips like it; free days are underlined, closed days crossed; the dashed line is the ramp's limit</source>
   <translation>Leyenda: pálido es vacío, intermedio es llenándose, azul intenso es lleno; lo rayado es inseguro; las salidas anotadas son círculos abiertos si fueron vacías, medio llenos si mixtas, llenos si llenas; los pequeños en el día elegido son salidas pasadas parecidas; los días libres van subrayados y los vedados tachados; la línea de trazos es el límite de la rampa</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/legend.py" />
   <source>Fullness: light </source>
   <translation>Llenado: vacío </translation>
  </message>
  <message>
   <location filename="planner/ui/strip/legend.py" />
   <source> full</source>
   <translation> lleno</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/legend.py" />
   <source> unsure</source>
   <translation> inseguro</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/legend.py" />
   <source> logged full</source>
   <translation> anotada llena</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/legend.py" />
   <source> mixed</source>
   <translation> mixta</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/legend.py" />
   <source> light (from 1 in 4)</source>
   <translation> vacía (desde 1 de cada 4)</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/legend.py" />
   <source> trips like this day</source>
   <translation> salidas como este día</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/legend.py" />
   <source> free day</source>
   <translation> día libre</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/legend.py" />
   <source> closed</source>
   <translation> veda</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/legend.py" />
   <source> ramp limit</source>
   <translation> límite rampa</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/table.py" />
   <source>Logged</source>
   <translation>Anotado</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/table.py" />
   <source>Plans</source>
   <translation>Planes</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/table.py" />
   <source>Free or closed</source>
   <translation>Libre o vedado</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/table.py" />
   <source>Days as a table</source>
   <translation>Los días en una tabla</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/table.py" />
   <source>closed: {closed}</source>
   <translation>veda: {closed}</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/table.py" />
   <source>free</source>
   <translation>libre</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/view.py" />
   <source>low to high</source>
   <translation>mínima a máxima</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/view.py" />
   <source>expected, 0 to 100</source>
   <translation>esperado, 0 a 100</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/view.py" />
   <source>Full crabs</source>
   <translation>Cangr. llenos</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/view.py" />
   <source>forecast and logged</source>
   <translation>pronóstico y registro</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/view.py" />
   <source>set to haul</source>
   <translation>calada a recogida</translation>
  </message>
  <message>
   <location filename="planner/ui/strip/view.py" />
   <source>Days: fullness, water, trips and plans</source>
   <translation>Días: llenado, agua, salidas y planes</translation>
  </message>
  <message>
   <location filename="planner/ui/tables.py" />
   <source>The same facts in rows and columns, and back</source>
   <translation>Los mismos datos en filas y columnas, y vuelta</translation>
  </message>
  <message>
   <location filename="planner/ui/tables.py" />
   <source>As a picture</source>
   <translation>Como imagen</translation>
  </message>
  <message>
   <location filename="planner/ui/tables.py" />
   <source>{chart} as a picture</source>
   <translation>{chart} en una imagen</translation>
  </message>
  <message>
   <location filename="planner/ui/tables.py" />
   <source>As a table</source>
   <translation>Como tabla</translation>
  </message>
  <message>
   <location filename="planner/ui/tables.py" />
   <source>{chart} as a table</source>
   <translation>{chart} en una tabla</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>install the program again: a file of its own is missing or damaged</source>
   <translation>instale el programa otra vez: falta o está dañado un archivo suyo</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>install tzdata: pip install tzdata</source>
   <translation>instale tzdata: pip install tzdata</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>{free:,.0f} MB free</source>
   <translation>{free:,.0f} MB libres</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>start Fullshell: it sets a damaged log aside and takes over what can be read; or go </source>
   <translation>inicie Fullshell: aparta un registro dañado y pasa a uno nuevo lo que se puede leer; o vuelva </translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>back to a backup with File, Backups of the log</source>
   <translation>a una copia de seguridad con Archivo, Copias de seguridad del registro</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>start Fullshell once: it sets the file aside; then choose in the View menu</source>
   <translation>inicie Fullshell una vez: aparta el archivo; luego elija en el menú Ver</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>send the newest to whoever keeps your Fullshell up to date</source>
   <translation>envíe el más reciente a quien mantiene al día su Fullshell</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>folder of your log</source>
   <translation>carpeta de su registro</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>folder of the log of faults</source>
   <translation>carpeta del registro de fallos</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>your log</source>
   <translation>su registro</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>whole</source>
   <translation>entero</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>its own files</source>
   <translation>archivos del programa</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>missing or damaged: {listed}</source>
   <translation>faltan o están dañados: {listed}</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>there and whole</source>
   <translation>presentes e íntegros</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>sun and moon</source>
   <translation>sol y luna</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>known today</source>
   <translation>conocidos hoy</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>time zones</source>
   <translation>husos horarios</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>without summer time</source>
   <translation>sin horario de verano</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>known</source>
   <translation>se conocen</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>cannot be written ({kind}, number {errno})</source>
   <translation>no se puede escribir en ella ({kind}, número {errno})</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>allow writing there, make room, or name another folder in the variable FULLSHELL_HOME</source>
   <translation>permita escribir allí, haga sitio o indique otra carpeta en la variable FULLSHELL_HOME</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>disk</source>
   <translation>disco</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>make room: what you log can no longer be saved</source>
   <translation>haga sitio: lo que anote ya no se puede guardar</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>none yet; the first trip makes it</source>
   <translation>aún no hay; se crea con la primera salida</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>is damaged</source>
   <translation>está dañado</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>backups of your log</source>
   <translation>copias de seguridad de su registro</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>{backups}, the newest of {newest:%Y-%m-%d}</source>
   <translation>{backups}, la más reciente del {newest:%Y-%m-%d}</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>one is made on each day that you use it</source>
   <translation>se hace una cada día que lo usa</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>settings</source>
   <translation>ajustes</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>not all of them can be used</source>
   <translation>no todos se pueden usar</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>can be read</source>
   <translation>se pueden leer</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>faults</source>
   <translation>fallos</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>{found} written down</source>
   <translation>{found} anotados</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>none written down</source>
   <translation>ninguno anotado</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>not known on {today}</source>
   <translation>no conocidos el {today}</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>set the clock of this machine; they are known from 1899 to 2053</source>
   <translation>ponga en hora el reloj de este equipo; se conocen de 1899 a 2053</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>the ephemeris cannot be read</source>
   <translation>no se pueden leer las efemérides</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>not found</source>
   <translation>no se encuentran</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>can be written</source>
   <translation>se puede escribir en ella</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>make room soon, for your log and its backups</source>
   <translation>haga sitio pronto, para su registro y sus copias de seguridad</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/files.py" />
   <source>cannot be read ({kind})</source>
   <translation>no se puede leer ({kind})</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/finding.py" />
   <source>ok</source>
   <translation>bien</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/finding.py" />
   <source>mind</source>
   <translation>ojo</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/finding.py" />
   <source>WRONG</source>
   <translation>MAL</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/finding.py" />
   <source>Nothing is wrong with this installation.</source>
   <translation>Esta instalación no tiene ningún fallo.</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/finding.py" />
   <source>{count} of {found} things are wrong with this installation.</source>
   <translation>Fallos en esta instalación: {count} de {found} puntos.</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/finding.py" />
   <source>Nothing is wrong with this installation; {noted} to mind.</source>
   <translation>Esta instalación no tiene ningún fallo; puntos a tener en cuenta: {noted}.</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/finding.py" />
   <source>Fullshell {version}: {verdict}</source>
   <translation>Fullshell {version}: {verdict}</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/finding.py" />
   <source>could not be looked at ({kind})</source>
   <translation>no se pudo examinar ({kind})</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/finding.py" />
   <source>install the program again</source>
   <translation>instale el programa otra vez</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/libraries.py" />
   <source>set the program up again: python3 packaging/start.py, or pip install "fullshell[window]"</source>
   <translation>vuelva a instalar el programa: python3 packaging/start.py, o pip install "fullshell[window]"</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/libraries.py" />
   <source>{version}, needed is {needed}</source>
   <translation>{version}, hace falta {needed}</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/libraries.py" />
   <source>{version} does not load ({kind}{value})</source>
   <translation>{version} no se carga ({kind}{value})</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/libraries.py" />
   <source>loads</source>
   <translation>se carga</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/libraries.py" />
   <source>Python</source>
   <translation>Python</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/libraries.py" />
   <source>install Python {least} to {newest}</source>
   <translation>instale Python {least} a {newest}</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/libraries.py" />
   <source>is not installed</source>
   <translation>no está instalado</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/libraries.py" />
   <source>tried up to {newest}; use that should something fail</source>
   <translation>probado hasta {newest}; use esa versión si algo falla</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/libraries.py" />
   <source>Fullshell</source>
   <translation>Fullshell</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/libraries.py" />
   <source>is not installed here, only lies here</source>
   <translation>no está instalado aquí, solo están sus archivos</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/screen.py" />
   <source>drawing</source>
   <translation>dibujo</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/screen.py" />
   <source>screen</source>
   <translation>pantalla</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/screen.py" />
   <source>there is none here</source>
   <translation>aquí no hay ninguna</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/screen.py" />
   <source>use the jobs of the command line, or a desktop</source>
   <translation>use las tareas de la línea de comandos, o un escritorio</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/screen.py" />
   <source>Qt does not start (status {returncode})</source>
   <translation>Qt no se inicia (estado {returncode})</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/screen.py" />
   <source>set the program up again: python3 packaging/start.py; the system may lack what packaging/README.md lists</source>
   <translation>vuelva a instalar el programa: python3 packaging/start.py; puede que al sistema le falte lo que enumera packaging/README.md</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/screen.py" />
   <source>the system lacks {lacking}</source>
   <translation>al sistema le falta {lacking}</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/screen.py" />
   <source>install it; on Debian and Ubuntu: sudo apt-get install {debian_package}</source>
   <translation>instálelo; en Debian y Ubuntu: sudo apt-get install {debian_package}</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/screen.py" />
   <source>there is no font: all text would be boxes</source>
   <translation>no hay ningún tipo de letra: todo el texto serían recuadros</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/screen.py" />
   <source>install one; on Debian and Ubuntu: sudo apt-get install {package}</source>
   <translation>instale uno; en Debian y Ubuntu: sudo apt-get install {package}</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/screen.py" />
   <source>Qt starts ({words})</source>
   <translation>Qt se inicia ({words})</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/screen.py" />
   <source>window</source>
   <translation>ventana</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/screen.py" />
   <source>no view can be drawn</source>
   <translation>no se puede dibujar ninguna vista</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/screen.py" />
   <source>the display {name} does not answer</source>
   <translation>la pantalla {name} no responde</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/screen.py" />
   <source>log in to the desktop, or leave DISPLAY and WAYLAND_DISPLAY unset</source>
   <translation>entre en el escritorio, o deje sin poner DISPLAY y WAYLAND_DISPLAY</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/screen.py" />
   <source>PySide6 is not installed; the command line works without it</source>
   <translation>PySide6 no está instalado; la línea de comandos funciona sin él</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/screen.py" />
   <source>Qt does not answer ({kind})</source>
   <translation>Qt no responde ({kind})</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/screen.py" />
   <source>start the machine anew</source>
   <translation>reinicie el equipo</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/screen.py" />
   <source>a view can be drawn</source>
   <translation>se puede dibujar una vista</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup/screen.py" />
   <source>silent</source>
   <translation>sin decir nada</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup_dialog.py" />
   <source>Looking at the installation</source>
   <translation>Examinando la instalación</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup_dialog.py" />
   <source>Check this installation</source>
   <translation>Comprobar esta instalación</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup_dialog.py" />
   <source>Looking at Python, Qt, files, folders and your log…</source>
   <translation>Examinando Python, Qt, los archivos, las carpetas y su registro…</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup_dialog.py" />
   <source>Findings</source>
   <translation>Resultados</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup_dialog.py" />
   <source>Copy report</source>
   <translation>Copiar informe</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup_dialog.py" />
   <source>Versions and findings, without any folder, name or place of yours</source>
   <translation>Versiones y resultados, sin ninguna carpeta, nombre ni lugar suyos</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/checkup_dialog.py" />
   <source>Copied.</source>
   <translation>Copiado.</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/fault_dialog.py" />
   <source>Fullshell itself went wrong{where}. You did nothing wrong, and what you logged is kept.</source>
   <translation>Ha fallado el propio Fullshell{where}. Usted no hizo nada mal, y lo que anotó está a salvo.</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/fault_dialog.py" />
   <source>Next: close this and go on; the window still works. If it goes wrong again, close Fullshell and start it anew. To have it put right, copy the report and send it to whoever keeps your Fullshell up to date. Nothing is sent by itself.</source>
   <translation>Qué hacer: cierre esto y siga; la ventana aún funciona. Si vuelve a fallar, cierre Fullshell y ábralo de nuevo. Para que se corrija, copie el informe y envíelo a quien mantiene al día su Fullshell. Nada se envía solo.</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/fault_dialog.py" />
   <source>The report holds versions, the view that was open and where in the program it went wrong. It holds no name, no folder of yours, no place and nothing from your log.</source>
   <translation>El informe contiene las versiones, la vista que estaba abierta y en qué parte del programa falló. No contiene ningún nombre, ninguna carpeta suya, ningún lugar ni nada de su registro.</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/fault_dialog.py" />
   <source>Fullshell stopped in the middle of its work the last time. What you logged until then is kept.</source>
   <translation>La última vez, Fullshell se detuvo en mitad de su trabajo. Lo que usted anotó hasta entonces está a salvo.</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/fault_dialog.py" />
   <source>Next: look at the last trip you were typing and go on. If it happens again, open Help, Check this installation. To have it put right, copy the report and send it to whoever keeps your Fullshell up to date. Nothing is sent by itself.</source>
   <translation>Qué hacer: mire la última salida que estaba escribiendo y siga. Si vuelve a pasar, abra Ayuda, Comprobar esta instalación. Para que se corrija, copie el informe y envíelo a quien mantiene al día su Fullshell. Nada se envía solo.</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/fault_dialog.py" />
   <source>Something went wrong</source>
   <translation>Algo ha fallado</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/fault_dialog.py" />
   <source>Report</source>
   <translation>Informe</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/fault_dialog.py" />
   <source>Add the error's own words; read them first</source>
   <translation>Añadir las palabras del propio error; léalas antes</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/fault_dialog.py" />
   <source>Put the report on the clipboard</source>
   <translation>Poner el informe en el portapapeles</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/fault_dialog.py" />
   <source>Save report…</source>
   <translation>Guardar informe…</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/fault_dialog.py" />
   <source>Write the report to a text file</source>
   <translation>Escribir el informe en un archivo de texto</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/fault_dialog.py" />
   <source> while {view} was open</source>
   <translation> con la vista {view} abierta</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/fault_dialog.py" />
   <source>
In its own words
{own_words}
</source>
   <translation>
En sus propias palabras
{own_words}
</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/fault_dialog.py" />
   <source>Save the report</source>
   <translation>Guardar el informe</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/fault_dialog.py" />
   <source>Text (*.txt)</source>
   <translation>Texto (*.txt)</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/fault_dialog.py" />
   <source>Saved.</source>
   <translation>Guardado.</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/fault_dialog.py" />
   <source>Not saved: {strerror}. Choose another folder.</source>
   <translation>No se guardó: {strerror}. Elija otra carpeta.</translation>
  </message>
  <message>
   <location filename="planner/ui/trouble/fault_front.py" />
   <source>The same thing went wrong again inside Fullshell. Close it and start it anew; the report is kept, and Help, Check this installation tells where.</source>
   <translation>Ha vuelto a fallar lo mismo dentro de Fullshell. Ciérrelo y ábralo de nuevo; el informe se conserva, y Ayuda, Comprobar esta instalación, dice dónde.</translation>
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>No place of your own yet: make one here, or open a published one. The demo goes as soon as another place is open, and comes back only when you ask for it in the File menu.</source>
   <translation>Todavía no tiene un lugar propio: cree uno aquí o abra uno publicado. La demostración se va en cuanto se abre otro lugar, y solo vuelve cuando usted la pide en el menú Archivo.</translation>
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>When should I set and pull?</source>
   <translation>¿Cuándo calo y recojo?</translation>
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>Load up</source>
   <translation>Preparar la salida</translation>
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>What goes aboard, and what are the rules here?</source>
   <translation>¿Qué va a bordo y qué normas hay aquí?</translation>
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>What did each trap give?</source>
   <translation>¿Qué dio cada nasa?</translation>
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>What do I know, and how sure?</source>
   <translation>¿Qué sé, y con qué seguridad?</translation>
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>Is the water right here?</source>
   <translation>¿Es correcta el agua aquí?</translation>
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>This place, its water and its log are invented, to show what Fullshell does.</source>
   <translation>Este lugar, su agua y su registro son inventados, para mostrar lo que hace Fullshell.</translation>
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>Put the demo away</source>
   <translation>Quitar la demostración</translation>
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>Close the invented place and its log and start with your own</source>
   <translation>Cerrar el lugar inventado y su registro, y empezar con lo suyo</translation>
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>Close the message</source>
   <translation>Cerrar el mensaje</translation>
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>About Fullshell</source>
   <translation>Acerca de Fullshell</translation>
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>Fullshell {version}

Plans crab trapping trips around water, light and how full the crabs should be.

{tide_caution}
Rules differ by place and change: check them with the agency. Wear a life jacket, check the weather, and leave a float plan ashore.</source>
   <translation>Fullshell {version}

Planea salidas con nasas de cangrejo según el agua, la luz y lo llenos que deberían estar los cangrejos.

{tide_caution}
Las normas varían según el lugar y cambian: consulte a la autoridad pesquera. Lleve puesto un chaleco salvavidas, compruebe el tiempo y deje en tierra un plan de navegación.</translation>
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>Stopped. Pick the place again to work it out.</source>
   <translation>Parado. Elija el lugar otra vez para calcularlo.</translation>
  </message>
  <message>
   <location filename="planner/ui/workbench.py" />
   <source>Working out the water, the moon and the crabs</source>
   <translation>Calculando el agua, la luna y los cangrejos</translation>
  </message>
  <message>
   <location filename="planner/ui/workbench.py" />
   <source>Looking for set and haul times</source>
   <translation>Buscando horas de calada y recogida</translation>
  </message>
  <message>
   <location filename="planner/ui/workbench.py" />
   <source>Ranking the plans</source>
   <translation>Ordenando los planes</translation>
  </message>
  <message>
   <location filename="planner/ui/workbench.py" />
   <source>Saving</source>
   <translation>Guardando</translation>
  </message>
  <message>
   <location filename="planner/ui/workbench.py" />
   <source>Opening the log</source>
   <translation>Abriendo el registro</translation>
  </message>
  <message>
   <location filename="planner/ui/workbench.py" />
   <source>This log is open for reading only; open the place itself.</source>
   <translation>Este registro está abierto solo para lectura; abra el lugar mismo.</translation>
  </message>
  <message>
   <location filename="planner/whole_file.py" />
   <source>{path} cannot be written ({strerror}); choose another folder or make room.</source>
   <translation>No se puede escribir {path} ({strerror}); elija otra carpeta o libere espacio.</translation>
  </message>
 </context>
</TS>
