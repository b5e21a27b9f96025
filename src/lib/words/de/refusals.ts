import type { Catalogue } from '../catalogue.ts';

export const refusals: Catalogue['refusals'] = {
	// Lesen, was eingegeben wurde
	'number-unreadable':
		'Das ist keine Zahl[: „{text}“]. Schreiben Sie sie in Ziffern, etwa 6,5 oder 1/4.',
	'number-ambiguous':
		'„{text}“ lässt sich auf zwei Arten lesen[: {readAs} oder {orAs}]. Schreiben Sie die Zahl ohne Tausendertrennung.',
	'number-out-of-range': 'Diese Zahl ist zu groß oder zu klein[: „{text}“]. Prüfen Sie sie.',
	'number-outside-limits': 'Das liegt außerhalb des Bereichs[; zulässig {limits}]. Prüfen Sie es.',
	'unit-missing': 'Die Einheit fehlt. Schreiben Sie sie zur Zahl[: {accepted}].',
	'unit-unknown':
		'Diese Einheit ist nicht bekannt[: „{unit}“]. Verwenden Sie eine von diesen[: {accepted}].',
	'unit-ambiguous':
		'Die Einheit „{unit}“ ist mehrdeutig. Geben Sie an, welche gemeint ist[: {accepted}].',
	'unit-of-other-dimension':
		'„{unit}“ misst etwas anderes[ ({unitDimension})]. Verwenden Sie eine von diesen[: {accepted}].',
	'pressure-absolute-not-accepted':
		'„{unit}“ ist ein Absolutdruck. Geben Sie stattdessen an, was das Manometer zeigt, in bar oder psi.',
	'pressure-gauge-not-accepted':
		'„{unit}“ ist ein Überdruck. Geben Sie hier den Absolutdruck an, wie ein Barometer ihn zeigt.',
	'flow-reference-in-unit':
		'„{unit}“ versteckt den Bezugszustand in der Einheit. Geben Sie eine schlichte Einheit an und wählen Sie den Bezugszustand daneben[; zulässig: {accepted}].',
	'reading-not-positive':
		'Ein Messwert muss über null liegen[; {reading} war {value}]. Prüfen Sie ihn.',

	// Standort, Luft und Leckagen
	'altitude-out-of-range':
		'Diese Höhe liegt außerhalb des Bereichs[: {value}; zulässig {limits}]. Korrigieren Sie sie.',
	'barometer-out-of-range':
		'Dieser Luftdruck liegt außerhalb des Bereichs[: {value}; zulässig {limits}]. Geben Sie den Absolutdruck an.',
	'temperature-out-of-range':
		'Diese Temperatur liegt außerhalb des Bereichs[: {value}; zulässig {limits}]. Korrigieren Sie sie.',
	'air-state-out-of-range':
		'Dieser Druck und diese Temperatur zusammen liegen außerhalb des Bereichs für Luft. Prüfen Sie beide.',
	'site-pressure-unknown':
		'Der Luftdruck am Standort ist nicht bekannt. Geben Sie die Höhe oder einen abgelesenen Luftdruck an.',
	'pressure-out-of-range':
		'Dieser Druck liegt außerhalb des Bereichs[: {value}; zulässig {limits}]. Prüfen Sie ihn.',
	'downstream-out-of-range':
		'Der Druck auf der Abströmseite muss unter dem Leitungsdruck liegen[: {value}; zulässig {limits}]. Prüfen Sie beide.',
	'coefficient-out-of-range':
		'Ein Durchflussbeiwert liegt über 0 und höchstens bei 1[; {coefficient} nicht]. Korrigieren Sie ihn.',
	'critical-ratio-out-of-range':
		'Ein kritisches Druckverhältnis ist mindestens 0 und kleiner als 1[; {b} nicht]. Prüfen Sie das Datenblatt.',
	'opening-out-of-range':
		'Diese Öffnung ist zu groß oder zu klein, um bewertet zu werden. Prüfen Sie Größe und Einheit.',
	'bubble-rate-too-high':
		'Eine so schnelle Leckage lässt sich nicht in Blasen zählen. Beschreiben Sie stattdessen, was der Schaum tat.',
	'evidence-missing':
		'Noch ohne Größe. Wählen Sie, was der Schaum tat, oder geben Sie eine Größe oder einen Messwert an.',
	'pressure-missing':
		'Der Druck hier ist nicht bekannt. Lesen Sie ihn an der Leckage ab oder geben Sie ihn beim Abschnitt unter „Einrichten“ an.',
	'hours-missing':
		'Die Stunden unter Druck fehlen. Wählen Sie einen Abschnitt und geben Sie dessen Stunden unter „Einrichten“ an.',
	'soap-response-unknown':
		'Dieses Verhalten des Schaums ist nicht bekannt[: „{response}“]. Wählen Sie eines aus der Liste.',
	'soap-band-unusable':
		'Die Spanne für dieses Verhalten ist nicht brauchbar[: {lowMm} bis {highMm}]. Geben Sie ein unteres Ende über 0 und ein höheres oberes Ende an.',
	'duty-unreadable':
		'Die Sekunden, in denen sie offen ist, müssen über 0 liegen und dürfen nicht mehr sein als die des ganzen Zyklus. Korrigieren Sie sie.',
	'uncertainty-not-positive':
		'Eine Unsicherheit muss über null liegen. Korrigieren oder leeren Sie sie.',
	'flow-out-of-range':
		'Dieser Volumenstrom liegt außerhalb des Bereichs[: {value}; zulässig {limits}]. Prüfen Sie ihn.',
	'volume-out-of-range':
		'Dieses Volumen liegt außerhalb des Bereichs[: {value}; zulässig {limits}]. Prüfen Sie es.',
	'leak-not-in-round':
		'Diese Leckage wurde in diesem Rundgang nicht als undicht gesehen, also gibt es nichts zu bewerten. Erfassen Sie, was zu sehen war, oder wählen Sie einen anderen Rundgang.',

	// Dateien von Datenloggern
	'logger-empty':
		'In dieser Datei steht nichts. Exportieren Sie sie noch einmal aus dem Datenlogger.',
	'logger-not-text':
		'Das ist keine Textdatei[: siehe Zeile {line}]. Exportieren Sie die Aufzeichnung als CSV oder Text.',
	'logger-line-too-long':
		'Zeile {line} ist viel zu lang für eine Reihe von Messwerten. Exportieren Sie die Aufzeichnung als CSV, eine Reihe je Zeile.',
	'logger-too-many-columns':
		'Die Zeilen haben zu viele Spalten[: {columns}; höchstens {most}]. Exportieren Sie weniger.',
	'logger-no-columns':
		'Es wurden keine Spalten gefunden[, gesucht ab Zeile {line}]. Sie müssen durch Komma, Semikolon oder Tabulator getrennt sein.',
	'logger-no-time':
		'Es wurde keine Spalte mit Zeiten gefunden[, gesucht ab Zeile {line}]. Exportieren Sie die Aufzeichnung mit ihren Zeitstempeln.',
	'logger-no-readings':
		'Es wurde keine Spalte mit Zahlen gefunden[, gesucht ab Zeile {line}]. Exportieren Sie ein Signal für Druck, Leistung, Strom oder Last.',
	'logger-time-unreadable':
		'Die Zeit in Zeile {line} ist nicht lesbar[: „{text}“, Spalte {column}]. Berichtigen Sie die Zeile oder wählen Sie die Schreibweise des Datums.',
	'logger-value-unreadable':
		'Der Messwert in Zeile {line} ist keine Zahl[: „{text}“, Spalte {column}]. Berichtigen Sie die Zeile oder wählen Sie eine andere Spalte.',
	'logger-no-rows':
		'Es gibt zu wenige Messwerte mit Zeit[: {rows}]. Wählen Sie eine andere Spalte oder eine längere Aufzeichnung.',
	'logger-time-not-rising':
		'Die Zeiten springen zu oft zurück[: {rows} Zeilen]. Wählen Sie die Schreibweise des Datums oder sortieren Sie die Datei nach der Zeit.',
	'logger-too-long':
		'Die Aufzeichnung ist zu lang[: mehr als {most} Zeilen]. Exportieren Sie eine kürzere Zeit oder seltenere Werte.',
	'logger-no-cycles':
		'In dieser Spalte wurde keine Maschine mit Last und Leerlauf gefunden. Wählen Sie eine andere Spalte oder eine längere Aufzeichnung. Eine drehzahlgeregelte Maschine zeigt keine Zyklen: Wählen Sie dafür die Prüfung „Druckabfall“ oder „Füllzeit“.',
	'logger-unreadable':
		'Die Datei ließ sich nicht bis zum Ende lesen. Kopieren Sie sie auf dieses Gerät und öffnen Sie sie noch einmal.',
	'logger-column-unknown':
		'Diese Spalte gibt es nicht[: „{column}“]. Wählen Sie eine von diesen[: {columns}].',
	'test-set-pressure-missing':
		'Der Solldruck ist nicht bekannt, also lässt sich die Leckage nicht für ihn angeben. Geben Sie ihn unter „Einrichten“ an.',

	// Systemprüfungen
	'no-cycles':
		'Es gibt keinen Zyklus, mit dem sich rechnen lässt. Geben Sie für mindestens einen die Lastzeit und die Leerlaufzeit an.',
	'cycle-unreadable':
		'Ein Zyklus hat eine Zeit, die nicht sein kann[: Nummer {cycle}]. Geben Sie seine Lastzeit und seine Leerlaufzeit an.',
	'never-loaded':
		'Die Maschine ging in diesen Zyklen nie in Last. Stoppen Sie die Zeit, bis sie einmal in Last gegangen ist.',
	'never-unloaded':
		'Die Maschine ging in diesen Zyklen nie in Leerlauf. Stoppen Sie die Zeit, bis sie einmal in Leerlauf gegangen ist.',
	'series-too-short':
		'Es gibt zu wenige Messwerte[: {readings}; mindestens {fewest} sind nötig]. Fügen Sie welche hinzu.',
	'times-not-rising':
		'Die Messwerte stehen nicht in zeitlicher Reihenfolge[: siehe Nummer {reading}]. Ordnen Sie sie.',
	'pressure-rises':
		'Der Druck steigt mitten im Abfall[: siehe Nummer {reading}]. Lassen Sie Messwerte mit laufender Erzeugung weg.',
	'pressures-not-apart':
		'Der Druck hat sich nicht in die richtige Richtung geändert[: von {fromBarGauge} auf {toBarGauge}]. Prüfen Sie beide Messwerte.',
	'test-pressure-out-of-range':
		'Ein Druck der Prüfung liegt außerhalb des Bereichs[: {fromBarGauge} und {toBarGauge}; zulässig {limits}]. Prüfen Sie beide.',
	'set-pressure-below-zero-flow':
		'Nach den Messwerten ist bei {setBarGauge} nichts mehr undicht[: Der Volumenstrom endet bei {zeroFlowBarGauge}]. Geben Sie die Leckage bei höherem Druck an.',
	'reading-negative': 'Das muss mindestens 0 sein[; {reading} war {value}]. Korrigieren Sie es.',

	// Leistung und Drucklufterzeugung
	'power-out-of-range':
		'Diese Leistung liegt außerhalb des Bereichs[: {value}; zulässig {limits}]. Prüfen Sie sie.',
	'power-below-isothermal-limit':
		'Diese Leistung ist kleiner, als die Physik für diesen Volumenstrom und Druck verlangt[: {value}, nötig {leastW}]. Prüfen Sie das Datenblatt.',
	'specific-power-out-of-range':
		'Die spezifische Leistung muss über null liegen[; {value} nicht]. Korrigieren Sie sie unter „Einrichten“.',
	'supply-missing':
		'Wie die Druckluft erzeugt wird, ist nicht bekannt, also gibt es noch keine Energie und keine Kosten. Beschreiben Sie die Drucklufterzeugung unter „Einrichten“.',
	'energy-out-of-range':
		'Diese Energie liegt außerhalb des Bereichs[: {value}]. Prüfen Sie Stunden und Leistung.',
	'hours-out-of-range':
		'Diese Stunden liegen außerhalb des Bereichs[: {value}; zulässig {limits}]. Korrigieren Sie sie.',
	'days-out-of-range':
		'Diese Zahl von Tagen liegt außerhalb des Bereichs[: {value}; zulässig {limits}]. Korrigieren Sie sie.',
	'weeks-out-of-range':
		'Diese Zahl von Wochen liegt außerhalb des Bereichs[: {value}; zulässig {limits}]. Korrigieren Sie sie.',
	'demand-out-of-range':
		'Der Bedarf eines Zeitraums muss mindestens 0 sein[; {value} nicht]. Korrigieren Sie ihn.',
	'discharge-below-inlet': 'Der Enddruck muss über dem Ansaugdruck liegen. Prüfen Sie beide.',
	'pressure-band-out-of-range':
		'Die Schaltdifferenz zwischen Ein- und Ausschaltdruck muss mindestens 0 sein[; {value} nicht]. Korrigieren Sie sie.',
	'set-pressure-out-of-range':
		'Der Solldruck muss über null liegen[; {value} nicht]. Korrigieren Sie den Zeitraum.',
	'compressor-out-of-range':
		'Eine Zahl von Kompressor {id} liegt außerhalb des Bereichs[: {field} {value}]. Prüfen Sie sie.',
	'compressor-twice': 'Kompressor {id} steht zweimal da. Entfernen Sie einen.',
	'compressor-control-out-of-range':
		'Eine Einstellung der Regelung liegt außerhalb des Bereichs. Vergleichen Sie sie mit dem Datenblatt.',
	'unloaded-above-loaded':
		'Ein Kompressor kann im Leerlauf nicht mehr Leistung aufnehmen als unter Last. Prüfen Sie beide.',
	'unloaded-above-unload-start':
		'Die Leistung nach der Entlastung kann nicht über der zu Beginn des Leerlaufs liegen. Prüfen Sie beide.',
	'curve-must-span-no-flow-to-full-flow':
		'Die Leistungskurve muss von keiner Förderung bis zur vollen reichen. Ergänzen Sie die Punkte an den Enden.',
	'curve-must-end-at-full-power':
		'Die Leistungskurve muss bei voller Leistung enden. Prüfen Sie ihren letzten Punkt.',
	'curve-must-rise':
		'Die Förderung muss in der Leistungskurve von Punkt zu Punkt steigen. Ordnen Sie die Punkte.',
	'trim-unknown': 'Die Regelmaschine ist keiner der Kompressoren. Wählen Sie sie noch einmal.',
	'station-has-no-compressor':
		'Es gibt noch keinen Kompressor. Fügen Sie unter „Einrichten“ einen hinzu.',
	'period-twice': 'Zeitraum {id} steht zweimal da. Entfernen Sie einen.',
	'period-day-out-of-range': 'Das ist kein Wochentag. Wählen Sie den Tag noch einmal.',
	'period-time-out-of-range':
		'Ein Zeitraum muss beginnen, bevor er endet, innerhalb eines Tages. Korrigieren Sie seine Zeiten.',
	'schedule-overlap':
		'Zwei Zeiträume der Woche überschneiden sich[: {first} und {second}]. Verschieben Sie einen.',
	'purge-out-of-range':
		'Der Anteil, den ein Trockner abbläst, liegt außerhalb des Bereichs[: {value}; zulässig {limits}]. Korrigieren Sie ihn.',
	'heat-recovery-out-of-range':
		'Ein Anteil der zurückgewonnenen Wärme liegt außerhalb des Bereichs[: {value}; zulässig {limits}]. Korrigieren Sie ihn.',
	'boiler-efficiency-out-of-range':
		'Dieser Kesselwirkungsgrad liegt außerhalb des Bereichs[: {value}; zulässig {limits}]. Korrigieren Sie ihn.',
	'fraction-out-of-range':
		'Dieser Anteil liegt außerhalb des Bereichs[: {value}; zulässig {limits}]. Korrigieren Sie ihn.',
	'set-pressure-missing':
		'Der Solldruck ist nicht bekannt. Geben Sie ihn unter „Einrichten“ an, dann versuchen Sie einen anderen.',
	'what-if-id-unknown':
		'Was durchgespielt werden sollte, nennt etwas, das nicht mehr in der Erfassung ist. Wählen Sie noch einmal.',
	'set-pressure-does-not-choke':
		'Bei so niedrigem Solldruck folgen Leckagen einem anderen Gesetz[: {value}]. Bleiben Sie über etwa 0,9 bar Überdruck.',
	'leaks-for-each-part':
		'Die Leckagen passen nicht zu den Teilen des Jahres. Das ist ein Fehler des Programms: Melden Sie ihn.',
	'leaks-while-off':
		'Eine Leckage wird gezählt, während die Erzeugung aus ist. Das ist ein Fehler des Programms: Melden Sie ihn.',
	'station-missing':
		'Diese Erfassung hat noch keine Maschinen. Tragen Sie sie unter „Einrichten“ ein.',

	// Was bei einem Jahr nicht fehlen darf
	shortage:
		'Es wird mehr Luft verlangt, als die Maschinen liefern[ in „{part}“][: {demandM3PerMin} von {capacityM3PerMin}]. Der Druck fällt dort.',
	'leaks-exceed-demand':
		'Die Leckagen ergeben zusammen mehr, als geliefert wird[ in „{part}“][: {leaksM3PerMin} von {availableM3PerMin}]. Nur das Gelieferte zählt: Prüfen Sie die Größen und den Bedarf.',
	'saving-negative':
		'Ohne die Leckagen würden die Maschinen mehr aufnehmen[ in „{part}“]. Ihre Reihenfolge hat dort eine Lücke: Sehen Sie nach, welche Maschine regelt.',
	'short-cycling':
		'Eine Maschine geht mehr als einmal je Minute in Last[ in „{part}“][: {cyclesPerMin} Mal]. Prüfen Sie Behälter und Schaltdifferenz.',
	'unassigned-time':
		'Manche Stunden der Woche gehören zu keinem Zeitraum[: {hoursPerYear} im Jahr]. Sie zählen als aus: Fügen Sie einen Zeitraum für sie hinzu.',

	// Geld
	'currency-unknown':
		'Diese Währung ist nicht bekannt[: „{currency}“]. Geben Sie ihr Kürzel aus drei Buchstaben an, etwa EUR.',
	'amount-out-of-range':
		'Dieser Geldbetrag ist zu groß, um genau zu sein. Prüfen Sie Preis und Stunden.',
	'price-out-of-range':
		'Ein Preis muss mindestens 0 sein[; {value} nicht]. Korrigieren Sie ihn unter „Einrichten“.',
	'price-missing': 'Es gibt noch keinen Energiepreis. Geben Sie unter „Einrichten“ einen an.',
	'tariff-has-no-price':
		'Der Tarif hat noch keinen Energiepreis. Geben Sie unter „Einrichten“ einen an.',
	'tariff-price-unknown':
		'Ein Zeitraum nennt einen Preis, den der Tarif nicht hat. Wählen Sie ihn noch einmal.',
	'carbon-factor-missing':
		'Es gibt noch keinen CO₂-Faktor, also kein CO₂e. Geben Sie unter „Einrichten“ einen mit seiner Quelle an.',
	'emission-factor-out-of-range':
		'Der CO₂-Faktor muss mindestens 0 sein[; {value} nicht]. Korrigieren Sie ihn unter „Einrichten“.',
	'emission-factor-without-source':
		'Der CO₂-Faktor hat keine Quelle. Geben Sie an, woher er stammt: Die Quelle wird neben der Zahl gedruckt.',
	'cost-out-of-range':
		'Diese Kosten müssen mindestens 0 sein[; {value} nicht]. Korrigieren Sie sie.',
	'saving-out-of-range':
		'Diese Einsparung liegt außerhalb des Bereichs[: {value}]. Prüfen Sie sie.',
	'never-pays-back':
		'Das amortisiert sich nie: Es spart nichts. Verzichten Sie darauf oder ändern Sie die Arbeit.',
	'discount-rate-out-of-range':
		'Der Zinssatz liegt außerhalb des Bereichs[: {value}; zulässig {limits}]. Geben Sie ihn als Anteil an, etwa 0,08.',
	'horizon-out-of-range':
		'Der betrachtete Zeitraum in Jahren liegt außerhalb des Bereichs[: {value}; zulässig {limits}]. Korrigieren Sie ihn.',
	'weight-out-of-range':
		'Ein Anteil muss mindestens 0 sein. Das ist ein Fehler des Programms: Melden Sie ihn.',
	'weights-add-up-to-nothing':
		'Es gibt nichts, wonach sich die Summe aufteilen ließe. Prüfen Sie, ob eine Leckage Volumenstrom und Stunden hat.',

	// Wie sicher, und die Systemprüfung
	'shared-error-out-of-range':
		'Ein gemeinsamer Fehler liegt außerhalb des Bereichs[: {spread}; zulässig {limits}]. Geben Sie ihn als Anteil an, etwa 0,2.',
	'run-option-out-of-range':
		'Eine Einstellung des 90-%-Bereichs liegt außerhalb des Bereichs[: {option} {value}; zulässig {limits}]. Korrigieren Sie sie.',
	'test-leak-not-positive':
		'Die Systemprüfung ergibt keine Leckage über null. Prüfen Sie vor dem Vergleich ihre Messwerte.',
	'test-uncertainty-out-of-range':
		'Die Unsicherheit der Systemprüfung liegt außerhalb des Bereichs[: {relativeStandardUncertainty}; zulässig {limits}]. Geben Sie sie als Anteil an, etwa 0,1.',
	'scaling-without-estimates':
		'Jede Leckage wurde gemessen, also gibt es keine Schätzung zu skalieren. Sehen Sie sich stattdessen die Systemprüfung an.',
	'scaling-below-measured':
		'An den Leckagen wurde mehr gemessen, als die Systemprüfung fand. Kontrollieren Sie die Prüfung und diese Messwerte.',
	'trial-worker-failed':
		'Was sich daraus ergäbe, ließ sich nicht berechnen. Laden Sie die Seite neu und versuchen Sie es noch einmal.',
	'uncertainty-worker-failed':
		'Der 90-%-Bereich ließ sich nicht berechnen. Laden Sie die Seite neu und versuchen Sie es noch einmal.',

	// Die Erfassung ändern
	'entity-exists': 'Das ist schon in der Erfassung. Ändern Sie, was dort steht.',
	'entity-unknown':
		'Das ist nicht mehr in der Erfassung oder war nie darin. Laden Sie die Seite neu und versuchen Sie es noch einmal.',
	'field-invalid':
		'Die Erfassung kann diesen Wert nicht aufnehmen[ ({field})]. Korrigieren Sie ihn.',
	'site-already-started':
		'Diese Erfassung hat ihren Standort schon. Beginnen Sie für einen anderen Standort eine neue.',
	'log-without-start':
		'Das Protokoll der Änderungen sagt nicht, bei welchem Standort es beginnt. Öffnen Sie eine andere Kopie.',
	'not-undoable':
		'Diese Änderung lässt sich nicht rückgängig machen. Ändern Sie sie von Hand zurück.',
	'survey-without-round':
		'Diese Erfassung hat noch keinen Rundgang. Beginnen Sie einen, dann bewerten Sie.',
	'round-missing':
		'Ein Vergleich braucht zwei Rundgänge, es gibt aber nur einen. Geben Sie eine Datei mit zweien an oder zwei Dateien eines Standorts.',
	'sites-differ':
		'Die beiden Dateien sind von verschiedenen Standorten[: {before} und {after}]. Geben Sie zwei Dateien eines Standorts an.',
	'rounds-not-in-order':
		'Ein Vergleich geht von einem früheren Rundgang zu einem späteren[: {before} zu {after}]. Wählen Sie sie umgekehrt.',
	'currency-differs':
		'Die beiden Rundgänge stehen in verschiedenen Währungen[: {before} und {after}]. Stellen Sie dieselbe ein, dann vergleichen Sie.',
	'system-tests-missing':
		'Eine gemessene Einsparung braucht in beiden Rundgängen eine Systemprüfung[; {round} hat keine]. Fügen Sie sie unter „Bewerten“ hinzu oder belassen Sie es bei dem, was das Abseifen belegt.',
	'round-unknown':
		'Einen Rundgang „{round}“ gibt es in dieser Erfassung nicht. Wählen Sie einen von diesen[: {rounds}].',
	'round-ambiguous':
		'Mehr als ein Rundgang heißt „{round}“. Geben Sie die Kennung des gemeinten an[: {rounds}].',

	// Auf diesem Gerät aufbewahren
	'nothing-to-undo': 'Hier gibt es nichts rückgängig zu machen.',
	'nothing-to-redo': 'Hier gibt es nichts zu wiederholen.',
	'write-failed':
		'Die letzte Änderung ist noch nicht gespeichert. Lassen Sie diese Seite offen; sichern Sie die Erfassung in eine Datei, falls es so bleibt.',
	'write-slow':
		'Der Speicher hat noch nicht geantwortet, die letzte Änderung ist also nicht sicher. Lassen Sie diese Seite offen; sichern Sie die Erfassung in eine Datei, falls es so bleibt.',
	'read-failed':
		'Was auf diesem Gerät gespeichert ist, ließ sich nicht lesen. Schließen Sie andere Tabs dieser Seite und laden Sie die Seite neu.',
	'storage-unavailable':
		'Dieser Browser lässt die Seite nichts aufbewahren. Erlauben Sie ihr den Speicher oder verlassen Sie den privaten Modus.',
	'storage-full':
		'Der Speicher des Geräts ist voll, die Änderung ist also nicht gespeichert. Sichern Sie die Erfassung zuerst in eine Datei; schaffen Sie dann Platz und versuchen Sie es noch einmal.',
	'pictures-in-no-file':
		'Dieser Standort steht noch nicht ganz in einer Erfassungsdatei, also wird keines seiner Bilder gelöscht. Sichern Sie ihn zuerst in eine Datei.',
	'storage-newer':
		'Was hier gespeichert ist, wurde von einer neueren Version geschrieben. Laden Sie die Seite neu, um zu aktualisieren, dann öffnen Sie es noch einmal.',
	'site-unknown':
		'Dieser Standort ist nicht auf diesem Gerät. Öffnen Sie seine Erfassungsdatei oder wählen Sie einen anderen Standort.',
	'site-newer':
		'Dieser Standort wurde von einer neueren Version geschrieben. Aktualisieren Sie, dann öffnen Sie ihn noch einmal.',

	// Erfassungsdateien
	'file-empty': 'Die Datei ist leer. Wählen Sie eine andere Kopie.',
	'file-unreadable': 'Die Datei ließ sich nicht lesen[: {name}]. Prüfen Sie, ob sie noch da ist.',
	'file-not-found': 'Diese Datei gibt es nicht[: {name}]. Prüfen Sie den Pfad.',
	'file-is-folder':
		'Das ist ein Ordner und keine Datei[: {name}]. Geben Sie die Erfassungsdatei darin an.',
	'file-not-allowed':
		'Sie dürfen diese Datei nicht lesen[: {name}]. Lassen Sie sich das Recht dazu geben.',
	'file-not-survey':
		'Das ist keine Erfassungsdatei. Wählen Sie eine Datei, die von hier gesichert wurde.',
	'file-newer':
		'Die Datei wurde von einer neueren Version geschrieben[: {version}; diese liest bis {newest}]. Aktualisieren Sie, dann öffnen Sie sie noch einmal.',
	'file-truncated':
		'Die Datei endet zu früh: Ein Teil fehlt. Kopieren Sie sie noch einmal von ihrer Quelle.',
	'file-damaged':
		'Die Datei ist beschädigt[ bei {entry}]. Kopieren Sie sie noch einmal von ihrer Quelle.',
	'file-checksum':
		'Ein Teil der Datei stimmt nicht mit dem überein, was gesichert wurde[: {entry}]. Kopieren Sie sie noch einmal von ihrer Quelle.',
	'file-compression':
		'Ein Teil der Datei ist auf eine Weise gepackt, die hier nicht gelesen wird[: {entry}]. Sichern Sie sie noch einmal.',
	'file-encrypted':
		'Die Datei ist mit einem Kennwort verschlüsselt. Öffnen Sie sie dort, wo sie verschlüsselt wurde, und sichern Sie sie ohne Kennwort.',
	'file-entry-missing':
		'Ein Teil der Datei fehlt[: {entry}]. Kopieren Sie sie noch einmal von ihrer Quelle.',
	'file-entry-path':
		'Die Datei benennt einen Teil auf unsichere Weise[: {entry}]. Sie wurde nicht geöffnet.',
	'file-bomb':
		'Ein Teil der Datei entpackt sich zu weit mehr, als angegeben ist[: {entry}]. Sie wurde nicht geöffnet.',
	'file-too-large':
		'Die Datei ist größer, als hier gelesen wird[: {value}; zulässig {limits}]. Teilen Sie die Erfassung oder entfernen Sie Fotos.',
	'json-unreadable':
		'Ein Teil der Datei ist kein lesbarer Text[: {entry}]. Kopieren Sie sie noch einmal von ihrer Quelle.',
	'json-too-deep':
		'Ein Teil der Datei ist zu tief verschachtelt[: {entry}]. Sie wurde nicht geöffnet.',
	'manifest-invalid':
		'Das Inhaltsverzeichnis der Datei ist nicht gültig[ ({field})]. Kopieren Sie sie noch einmal von ihrer Quelle.',
	'survey-invalid':
		'Die Erfassung in der Datei ist nicht gültig[ ({field})]. Sie wurde nicht geöffnet.',

	// Bilder von Plänen
	'image-file-too-big':
		'Die Bilddatei ist zu groß[: {megabytes}; höchstens {most}]. Speichern Sie sie kleiner.',
	'image-too-many-pixels':
		'Das Bild hat zu viele Bildpunkte[: {megapixels}; höchstens {most}]. Speichern Sie es kleiner.',
	'image-header-broken':
		'Das Bild ist beschädigt[ ({kind})]. Speichern Sie es neu und versuchen Sie es noch einmal.',
	'image-cut-short': 'Das Bild endet zu früh: Ein Teil fehlt. Kopieren Sie es noch einmal.',
	'image-kind-known-not-read':
		'Bilder der Art {kind} werden hier nicht gelesen. Speichern Sie das Bild als PNG, JPEG oder SVG.',
	'image-kind-unknown':
		'Das ist kein Bild, das hier gelesen wird. Verwenden Sie PNG, JPEG oder SVG.',
	'image-not-decoded':
		'Das Bild ließ sich nicht öffnen. Speichern Sie es noch einmal als PNG oder JPEG.',
	'photo-heic':
		'Dieser Browser kann keine HEIC-Fotos öffnen. Stellen Sie die Kamera auf JPEG oder senden Sie das Foto als JPEG.',
	'photo-not-drawn':
		'Das Foto ließ sich nicht öffnen. Nehmen Sie es noch einmal auf oder speichern Sie es als JPEG.',
	'image-without-size': 'Das Bild sagt nicht, wie groß es ist. Speichern Sie es als PNG oder JPEG.',
	'pdf-locked': 'Dieses PDF verlangt ein Kennwort. Speichern Sie eine Kopie ohne Kennwort.',
	'app-part-missing':
		'Ein Teil der App ließ sich nicht laden. Stellen Sie eine Internetverbindung her, laden Sie die Seite neu und versuchen Sie es noch einmal.',
	'pdf-unreadable':
		'Dieses PDF ist beschädigt oder abgeschnitten. Kopieren Sie es noch einmal von seiner Quelle.',
	'pdf-page-not-drawn':
		'Seite {page} dieses PDF ließ sich nicht zeichnen. Speichern Sie sie als PNG oder JPEG.',
	'plan-points-missing':
		'Auf beiden Zeichnungen sind mindestens zwei Punkte nötig. Tippen Sie sie nacheinander an.',
	'plan-points-too-close':
		'Diese Punkte liegen zu nah beieinander. Nehmen Sie weit entfernte Punkte.',
	'plan-points-in-line': 'Diese drei Punkte liegen auf einer Linie. Nehmen Sie einen weit daneben.',
	'plan-corners-crossed':
		'Diese Ecken laufen nicht um ein Blatt herum. Tippen Sie oben links, oben rechts, unten rechts, unten links an.',
	'plan-without-scale':
		'Auf diesem Plan gibt es keine Meter[, „{plan}“]. Legen Sie zuerst seinen Maßstab an einer bekannten Strecke fest.',
	'plan-not-chosen': 'Geben Sie an, welcher Plan gemeint ist[; es gibt diese: {plans}].',
	'survey-without-plan':
		'In dieser Erfassung gibt es keinen Plan. Fügen Sie unter „Einrichten“ einen hinzu.',

	// Das Beheben planen
	'plan-without-windows':
		'Es gibt noch kein Abschaltfenster. Fügen Sie eine Zeit hinzu, in der die Luft aus sein kann.',
	'plan-without-jobs':
		'Noch lässt sich keine Leckage einplanen. Bewerten Sie die Leckagen unter „Bewerten“ oder ändern Sie, was ausgelassen ist.',

	// Die Liste übergeben
	'work-order-priority-without-word':
		'Die Priorität „{priority}“ hat in Ihrer Liste kein Wort[; Reparatur {tag} braucht eines]. Schreiben Sie es neben die Spalten.',
	'work-order-field-unknown':
		'Die Spalte „{heading}“ soll „{content}“ enthalten, was hier nicht bekannt ist. Wählen Sie einen anderen Inhalt.',
	'work-order-heading-twice':
		'Die Überschrift „{heading}“ steht zweimal da. Geben Sie jeder Spalte eine eigene.',
	'work-order-heading-missing':
		'Eine Spalte hat keine Überschrift. Schreiben Sie, wie Ihr System sie nennt.',
	'work-order-without-cautions':
		'Keine Spalte enthält die Beschreibung mit den Sicherheitshinweisen. Fügen Sie eine hinzu: Ohne sie wird keine Reparatur übergeben.',
	'printing-worker-failed':
		'Die Seiten ließen sich nicht erstellen. Schließen Sie andere Seiten, um Speicher frei zu machen, und versuchen Sie es noch einmal; die Tabellen tragen dieselben Sicherheitshinweise.',

	// Die Befehlszeile
	'command-missing':
		'Es wurde kein Befehl angegeben. Verwenden Sie einen von diesen[: {accepted}].',
	'command-unknown':
		'Den Befehl „{given}“ gibt es nicht. Verwenden Sie einen von diesen[: {accepted}].',
	'option-unknown':
		'Die Option „{option}“ gibt es hier nicht. Verwenden Sie eine von diesen[: {accepted}].',
	'option-without-value':
		'Die Option {option} braucht einen Wert. Schreiben Sie ihn dahinter[, etwa {example}].',
	'option-with-value': 'Die Option {option} nimmt keinen Wert. Lassen Sie „{text}“ weg.',
	'option-twice': 'Die Option {option} wurde zweimal angegeben. Geben Sie sie einmal an.',
	'option-missing': 'Die Option {option} fehlt. Geben Sie sie an[, etwa {example}].',
	'option-unusable-with':
		'Die Option {option} lässt sich nicht mit {other} verwenden. Lassen Sie eine davon weg.',
	'choice-unknown':
		'„{text}“ gehört nicht zur Auswahl. Verwenden Sie eines von diesen[: {accepted}].',
	'pair-unreadable': '„{text}“ ist nicht lesbar. Schreiben Sie es[ wie {example}].',
	'share-unreadable':
		'„{text}“ ist kein Anteil. Schreiben Sie ihn als 25 % oder 0.25, von 0 bis 1.',
	'argument-missing': 'Es fehlt: {argument}. Geben Sie es an[, etwa {example}].',
	'argument-unexpected':
		'„{text}“ ist ein Wort zu viel. Setzen Sie einen Wert mit Leerzeichen in Anführungszeichen.'
};
