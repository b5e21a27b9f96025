/**
 * Every refusal code: what is wrong and what to do next. `{name}` is a quantity of the refusal's
 * detail with its unit, `{value}` the quantity that offended, `{limits}` what is accepted. A part
 * in square brackets is left out when the refusal does not carry the quantities in it.
 */
export const refusals = {
	// Reading what was typed
	'number-unreadable': 'This is not a number[: “{text}”]. Write it in figures, such as 6.5 or 1/4.',
	'number-ambiguous':
		'“{text}” can be read two ways[: {readAs} or {orAs}]. Write it without grouping the thousands.',
	'number-out-of-range': 'This number is too large or too small[: “{text}”]. Check it.',
	'number-outside-limits': 'This is out of range[; accepted {limits}]. Check it.',
	'unit-missing': 'The unit is missing. Write it with the number[: {accepted}].',
	'unit-unknown': 'This unit is not known[: “{unit}”]. Use one of these[: {accepted}].',
	'unit-ambiguous': 'The unit “{unit}” means more than one thing. Say which[: {accepted}].',
	'unit-of-other-dimension':
		'“{unit}” measures something else[ ({unitDimension})]. Use one of these[: {accepted}].',
	'pressure-absolute-not-accepted':
		'“{unit}” is absolute pressure. Give what the gauge shows instead, in bar or psi.',
	'pressure-gauge-not-accepted':
		'“{unit}” is gauge pressure. Give absolute pressure here, as a barometer shows it.',
	'flow-reference-in-unit':
		'“{unit}” hides the reference in the unit. Give a plain unit and choose the reference of the flow beside it[; accepted: {accepted}].',
	'reading-not-positive': 'A reading must be above zero[; {reading} was {value}]. Check it.',

	// Site, air and leaks
	'altitude-out-of-range':
		'This altitude is out of range[: {value}; accepted {limits}]. Correct it.',
	'barometer-out-of-range':
		'This barometer reading is out of range[: {value}; accepted {limits}]. Give absolute pressure.',
	'temperature-out-of-range':
		'This temperature is out of range[: {value}; accepted {limits}]. Correct it.',
	'air-state-out-of-range':
		'This pressure and temperature together are out of range for air. Check both.',
	'site-pressure-unknown':
		'The air pressure at the site is not known. Give the altitude or a barometer reading.',
	'pressure-out-of-range': 'This pressure is out of range[: {value}; accepted {limits}]. Check it.',
	'downstream-out-of-range':
		'The downstream pressure must lie below the line pressure[: {value}; accepted {limits}]. Check both.',
	'coefficient-out-of-range':
		'A discharge coefficient lies above 0 and is at most 1[; {coefficient} does not]. Correct it.',
	'critical-ratio-out-of-range':
		'A critical pressure ratio is 0 or more and below 1[; {b} is not]. Check the data sheet.',
	'opening-out-of-range':
		'This opening is too large or too small to be weighed. Check its size and unit.',
	'bubble-rate-too-high':
		'A leak this fast cannot be counted in bubbles. Describe how the soap film behaved instead.',
	'evidence-missing': 'It has no size yet. Say what the soap did, or give a size or a reading.',
	'pressure-missing':
		'The pressure here is not known. Read it at the leak, or give its section one on Set up.',
	'hours-missing':
		'Its hours under pressure are not known. Put it on a section, and give that its hours on Set up.',
	'soap-response-unknown':
		'This soap response is not known[: “{response}”]. Choose one of those listed.',
	'soap-band-unusable':
		'The band of this soap response is not usable[: {lowMm} to {highMm}]. Give a low end above 0 and a higher high end.',
	'duty-unreadable':
		'Seconds open must be above 0 and no more than the seconds of the whole cycle. Correct them.',
	'uncertainty-not-positive': 'An uncertainty must be above zero. Correct it or clear it.',
	'flow-out-of-range': 'This flow is out of range[: {value}; accepted {limits}]. Check it.',
	'volume-out-of-range': 'This volume is out of range[: {value}; accepted {limits}]. Check it.',
	'leak-not-in-round':
		'This leak was not seen leaking in this round, so there is nothing to weigh. Record what was seen, or choose another round.',

	// Logger files
	'logger-empty': 'There is nothing in this file. Export it from the logger again.',
	'logger-not-text':
		'This is not a text file[: see line {line}]. Export the recording as CSV or text.',
	'logger-line-too-long':
		'Line {line} is far too long for a row of readings. Export the recording as CSV, one row a line.',
	'logger-too-many-columns':
		'The rows have too many columns[: {columns}; at most {most}]. Export fewer.',
	'logger-no-columns':
		'No columns were found[, looking from line {line} on]. They must be parted by comma, semicolon or tab.',
	'logger-no-time':
		'No column of times was found[, looking from line {line} on]. Export the recording with its time stamps.',
	'logger-no-readings':
		'No column of numbers was found[, looking from line {line} on]. Export a pressure, power, current or load signal.',
	'logger-time-unreadable':
		'The time on line {line} cannot be read[: “{text}”, column {column}]. Mend the line, or choose how days are written.',
	'logger-value-unreadable':
		'The reading on line {line} is not a number[: “{text}”, column {column}]. Mend the line, or choose another column.',
	'logger-no-rows':
		'There are too few readings with a time[: {rows}]. Choose another column or a longer recording.',
	'logger-time-not-rising':
		'The times jump back too often[: {rows} rows]. Choose how days are written, or sort the file by time.',
	'logger-too-long':
		'The recording is too long[: more than {most} rows]. Export a shorter time, or a row less often.',
	'logger-no-cycles':
		'No machine that loads and unloads was found in this column. Choose another column or a longer recording. A machine that changes its speed shows no cycles: let the network bleed down instead, or pump it up.',
	'logger-unreadable':
		'The file could not be read to its end. Copy it to this device and open it again.',
	'logger-column-unknown':
		'There is no such column[: “{column}”]. Choose one of these[: {columns}].',
	'test-set-pressure-missing':
		'The set pressure of the supply is not known, so the leak cannot be stated at it. Give it on Set up.',

	// System tests
	'no-cycles':
		'There is no cycle to reckon with. Give the loaded and unloaded time of at least one.',
	'cycle-unreadable':
		'A cycle has a time that cannot be[: number {cycle}]. Give its loaded and its unloaded time.',
	'never-loaded': 'The machine never loaded in these cycles. Time it until it has loaded once.',
	'never-unloaded':
		'The machine never unloaded in these cycles. Time it until it has unloaded once.',
	'series-too-short':
		'There are too few readings[: {readings}; at least {fewest} are needed]. Add some.',
	'times-not-rising':
		'The readings are not in the order of time[: see number {reading}]. Put them in order.',
	'pressure-rises':
		'The pressure rises in the middle of the fall[: see number {reading}]. Leave out readings with supply.',
	'pressures-not-apart':
		'The pressure did not change the right way[: from {fromBarGauge} to {toBarGauge}]. Check both readings.',
	'test-pressure-out-of-range':
		'A pressure of the test is out of range[: {fromBarGauge} and {toBarGauge}; accepted {limits}]. Check both.',
	'set-pressure-below-zero-flow':
		'By the readings nothing leaks at {setBarGauge} any more[: the flow ends at {zeroFlowBarGauge}]. State the leak at a higher pressure.',
	'reading-negative': 'This must be 0 or more[; {reading} was {value}]. Correct it.',

	// Power and supply
	'power-out-of-range': 'This power is out of range[: {value}; accepted {limits}]. Check it.',
	'power-below-isothermal-limit':
		'This power is less than physics needs for that flow and pressure[: {value}, needs {leastW}]. Check the data sheet.',
	'specific-power-out-of-range':
		'The specific power must be above zero[; {value} is not]. Correct it on Set up.',
	'supply-missing':
		'How the air is made is not known, so there is no energy and no cost yet. Describe the supply on Set up.',
	'energy-out-of-range': 'This energy is out of range[: {value}]. Check hours and power.',
	'hours-out-of-range': 'These hours are out of range[: {value}; accepted {limits}]. Correct them.',
	'days-out-of-range':
		'This number of days is out of range[: {value}; accepted {limits}]. Correct it.',
	'weeks-out-of-range':
		'This number of weeks is out of range[: {value}; accepted {limits}]. Correct it.',
	'demand-out-of-range': 'The demand of a period must be 0 or more[; {value} is not]. Correct it.',
	'discharge-below-inlet': 'The discharge pressure must lie above the inlet pressure. Check both.',
	'pressure-band-out-of-range':
		'The band between cut-in and cut-out must be 0 or more[; {value} is not]. Correct it.',
	'set-pressure-out-of-range':
		'The set pressure must be above zero[; {value} is not]. Correct the period.',
	'compressor-out-of-range':
		'A figure of compressor {id} is out of range[: {field} {value}]. Check it.',
	'compressor-twice': 'Compressor {id} is listed twice. Remove one.',
	'compressor-control-out-of-range':
		'A control setting of the compressor is out of range. Check it against its data sheet.',
	'unloaded-above-loaded': 'A compressor cannot take more power unloaded than loaded. Check both.',
	'unloaded-above-unload-start':
		'The power after blow-down cannot lie above the power as unloading starts. Check both.',
	'curve-must-span-no-flow-to-full-flow':
		'The power curve must run from no flow to full flow. Add the points at its ends.',
	'curve-must-end-at-full-power': 'The power curve must end at full power. Check its last point.',
	'curve-must-rise': 'The points of the power curve must rise in flow. Put them in order.',
	'trim-unknown': 'The trim machine is not one of the compressors. Choose it again.',
	'station-has-no-compressor': 'There is no compressor yet. Add one on Set up.',
	'period-twice': 'Period {id} is listed twice. Remove one.',
	'period-day-out-of-range': 'This is not a day of the week. Choose the day again.',
	'period-time-out-of-range':
		'A period must start before it ends, within one day. Correct its times.',
	'schedule-overlap': 'Two periods of the week overlap[: {first} and {second}]. Move one.',
	'purge-out-of-range':
		'The share that a dryer blows away is out of range[: {value}; accepted {limits}]. Correct it.',
	'heat-recovery-out-of-range':
		'A share of recovered heat is out of range[: {value}; accepted {limits}]. Correct it.',
	'boiler-efficiency-out-of-range':
		'This boiler efficiency is out of range[: {value}; accepted {limits}]. Correct it.',
	'fraction-out-of-range': 'This share is out of range[: {value}; accepted {limits}]. Correct it.',
	'set-pressure-missing':
		'The set pressure of the supply is not known. Give it on Set up, then try another.',
	'what-if-id-unknown':
		'What was to be tried names something that is no longer in the survey. Choose again.',
	'set-pressure-does-not-choke':
		'At so low a set pressure leaks follow another law[: {value}]. Keep it above about 0.9 bar gauge.',
	'leaks-for-each-part':
		'The leaks do not fit the parts of the year. This is a fault of the program: report it.',
	'leaks-while-off':
		'A leak is counted while the supply is off. This is a fault of the program: report it.',
	'station-missing': 'This survey has no machines yet. Enter them on Set up.',

	// What a year must not be shown without
	shortage:
		'More air is asked for than the machines deliver[ in “{part}”][: {demandM3PerMin} of {capacityM3PerMin}]. The pressure will fall there.',
	'leaks-exceed-demand':
		'The leaks add up to more than is delivered[ in “{part}”][: {leaksM3PerMin} of {availableM3PerMin}]. Only what is delivered counts: check the sizes and the demand.',
	'saving-negative':
		'Without the leaks the machines would draw more[ in “{part}”]. Their sequence has a gap there: look at which machine trims.',
	'short-cycling':
		'A machine loads more than once a minute[ in “{part}”][: {cyclesPerMin} times]. Check the receiver and the pressure band.',
	'unassigned-time':
		'Some hours of the week belong to no period[: {hoursPerYear} a year]. They count as off: add a period for them.',

	// Money
	'currency-unknown':
		'This currency is not known[: “{currency}”]. Give its three-letter code, such as EUR.',
	'amount-out-of-range':
		'This amount of money is too large to be exact. Check the price and hours.',
	'price-out-of-range': 'A price must be 0 or more[; {value} is not]. Correct it on Set up.',
	'price-missing': 'There is no energy price yet. Give one on Set up.',
	'tariff-has-no-price': 'The tariff has no energy price yet. Give one on Set up.',
	'tariff-price-unknown': 'A period names a price that the tariff does not have. Choose it again.',
	'carbon-factor-missing':
		'There is no carbon factor yet, so there is no CO₂e. Give one with its source on Set up.',
	'emission-factor-out-of-range':
		'The carbon factor must be 0 or more[; {value} is not]. Correct it on Set up.',
	'emission-factor-without-source':
		'The carbon factor has no source. Say where it comes from: it is printed beside the figure.',
	'cost-out-of-range': 'This cost must be 0 or more[; {value} is not]. Correct it.',
	'saving-out-of-range': 'This saving is out of range[: {value}]. Check it.',
	'never-pays-back': 'This never pays for itself: it saves nothing. Leave it or change the work.',
	'discount-rate-out-of-range':
		'The yearly rate is out of range[: {value}; accepted {limits}]. Give it as a share, such as 0.08.',
	'horizon-out-of-range':
		'The years looked at are out of range[: {value}; accepted {limits}]. Correct them.',
	'weight-out-of-range': 'A share must be 0 or more. This is a fault of the program: report it.',
	'weights-add-up-to-nothing':
		'There is nothing to share the total out by. Check that some leak has a flow and hours.',

	// How sure, and the system test
	'shared-error-out-of-range':
		'A shared error is out of range[: {spread}; accepted {limits}]. Give it as a share, such as 0.2.',
	'run-option-out-of-range':
		'A setting of the interval is out of range[: {option} {value}; accepted {limits}]. Correct it.',
	'test-leak-not-positive':
		'The system test gives no leak above zero. Check its readings before comparing.',
	'test-uncertainty-out-of-range':
		'The uncertainty of the system test is out of range[: {relativeStandardUncertainty}; accepted {limits}]. Give it as a share, such as 0.1.',
	'scaling-without-estimates':
		'Every leak was measured, so there is no estimate to scale. Check the test instead.',
	'scaling-below-measured':
		'What was measured at the leaks is more than the system test found. Check the test and those readings.',
	'trial-worker-failed':
		'What this would come to could not be worked out. Reload the page and try again.',
	'uncertainty-worker-failed':
		'The interval could not be worked out. Reload the page and try again.',

	// Changing the survey
	'entity-exists': 'This is in the survey already. Change the one that is there.',
	'entity-unknown': 'This is no longer in the survey, or never was. Reload and try again.',
	'field-invalid': 'The survey cannot keep this value[ ({field})]. Correct it.',
	'site-already-started':
		'This survey already has its site. Start another survey for another site.',
	'log-without-start':
		'The log of changes does not say which site it starts from. Open another copy.',
	'not-undoable': 'This change cannot be undone. Change it back by hand.',
	'survey-without-round': 'This survey has no round yet. Start one, then weigh it.',
	'round-missing':
		'A comparison needs two rounds, and there is one. Give a file with two, or two files of one site.',
	'sites-differ':
		'The two files are of different sites[: {before} and {after}]. Give two files of one site.',
	'rounds-not-in-order':
		'A comparison goes from an earlier round to a later one[: {before} to {after}]. Choose them the other way round.',
	'currency-differs':
		'The two rounds are in different currencies[: {before} and {after}]. Set the same one, then compare.',
	'system-tests-missing':
		'A measured saving needs a system test in both rounds[; {round} has none]. Add one on Weigh, or leave it at what soap proves.',
	'round-unknown': 'There is no round “{round}” in this survey. Choose one of these[: {rounds}].',
	'round-ambiguous':
		'More than one round is called “{round}”. Give the id of the one that is meant[: {rounds}].',

	// Keeping it on this device
	'nothing-to-undo': 'There is nothing to undo here.',
	'nothing-to-redo': 'There is nothing to bring back here.',
	'write-failed':
		'The last change is not on disk yet. Keep this page open; save the survey to a file if it goes on.',
	'write-slow':
		'The disk has not answered yet, so the last change is not safe. Keep this page open; save the survey to a file if it goes on.',
	'read-failed':
		'What is stored on this device could not be read. Close other tabs of this page and reload.',
	'app-part-missing':
		'A part of the app could not be loaded. Connect to a network, load the page again and try once more.',
	'storage-unavailable':
		'This browser does not let the page keep anything. Allow storage for it, or leave private browsing.',
	'storage-full':
		'The device is full, so the change is not on disk. Make room, then try again; save the survey to a file first.',
	'pictures-in-no-file':
		'Not all of this site is in a survey file, so no picture of it is deleted. Save it to a file first.',
	'storage-newer':
		'What is stored here was written by a newer version. Reload to update, then open it again.',
	'site-unknown': 'This site is not on this device. Open its survey file, or choose another site.',
	'site-newer': 'This site was written by a newer version. Update, then open it again.',

	// Survey files
	'file-empty': 'The file is empty. Choose another copy.',
	'file-unreadable': 'The file could not be read[: {name}]. Check that it is still there.',
	'file-not-found': 'There is no such file[: {name}]. Check the path.',
	'file-is-folder': 'This is a folder and not a file[: {name}]. Give the survey file in it.',
	'file-not-allowed': 'This file may not be read by you[: {name}]. Ask for the right to read it.',
	'file-not-survey': 'This is not a survey file. Choose a file that was saved from here.',
	'file-newer':
		'The file was written by a newer version[: {version}; this one reads up to {newest}]. Update, then open it again.',
	'file-truncated':
		'The file ends too early: part of it is missing. Copy it again from its source.',
	'file-damaged': 'The file is damaged[ at {entry}]. Copy it again from its source.',
	'file-checksum':
		'Part of the file is not what was saved[: {entry}]. Copy it again from its source.',
	'file-compression':
		'Part of the file is packed in a way that is not read here[: {entry}]. Save it again.',
	'file-encrypted':
		'The file is locked with a password. Open it where it was locked and save it plain.',
	'file-entry-missing': 'Part of the file is missing[: {entry}]. Copy it again from its source.',
	'file-entry-path':
		'The file names a part in a way that is not safe[: {entry}]. It was not opened.',
	'file-bomb': 'Part of the file unpacks to far more than it says[: {entry}]. It was not opened.',
	'file-too-large':
		'The file is larger than is read here[: {value}; accepted {limits}]. Split the survey or remove photos.',
	'json-unreadable':
		'Part of the file is not readable text[: {entry}]. Copy it again from its source.',
	'json-too-deep': 'Part of the file is nested too deep[: {entry}]. It was not opened.',
	'manifest-invalid':
		'The file’s list of contents is not valid[ ({field})]. Copy it again from its source.',
	'survey-invalid': 'The survey in the file is not valid[ ({field})]. It was not opened.',

	// Plan images
	'image-file-too-big':
		'The picture file is too big[: {megabytes}; at most {most}]. Save it smaller.',
	'image-too-many-pixels':
		'The picture has too many pixels[: {megapixels}; at most {most}]. Save it smaller.',
	'image-header-broken': 'The picture is damaged[ ({kind})]. Save it again and try once more.',
	'image-cut-short': 'The picture ends too early: part of it is missing. Copy it again.',
	'image-kind-known-not-read': '{kind} pictures are not read here. Save it as PNG, JPEG or SVG.',
	'image-kind-unknown': 'This is not a picture that is read here. Use PNG, JPEG or SVG.',
	'image-not-decoded': 'The picture could not be opened. Save it again as PNG or JPEG.',
	'photo-heic':
		'This browser cannot open HEIC photos. Set the camera to save JPEG, or send the photo as JPEG.',
	'photo-not-drawn': 'The photo could not be opened. Take it again, or save it as JPEG.',
	'image-without-size': 'The picture does not say how large it is. Save it as PNG or JPEG.',
	'pdf-locked': 'This PDF asks for a password. Save a copy of it without one.',
	'pdf-unreadable': 'This PDF is damaged or cut short. Copy it again from its source.',
	'pdf-page-not-drawn': 'Page {page} of this PDF could not be drawn. Save it as PNG or JPEG.',
	'plan-points-missing': 'At least two points are needed on both drawings. Tap them in turn.',
	'plan-points-too-close': 'These points are too close together. Take points far apart.',
	'plan-points-in-line': 'These three points lie on one line. Take one well beside it.',
	'plan-corners-crossed':
		'These corners do not go round a sheet. Tap top left, top right, bottom right, bottom left.',
	'plan-without-scale':
		'There are no metres on this plan[, “{plan}”]. Set its scale by a known distance first.',
	'plan-not-chosen': 'Say which plan[; there are these: {plans}].',
	'survey-without-plan': 'There is no plan in this survey. Add one on Set up.',

	// Planning the mending
	'plan-without-windows': 'There is no window yet. Add a time when air can be off.',
	'plan-without-jobs':
		'No leak can be planned yet. Price the leaks on Weigh, or change what is left out.',

	// Handing the list over
	'work-order-priority-without-word':
		'The priority “{priority}” has no word in your list[; repair {tag} needs one]. Write it beside the columns.',
	'work-order-field-unknown':
		'The column “{heading}” is to hold “{content}”, which is not known here. Choose another content.',
	'work-order-heading-twice': 'The heading “{heading}” stands twice. Give each column its own.',
	'work-order-heading-missing': 'A column has no heading. Write what your system calls it.',
	'work-order-without-cautions':
		'No column holds the description with its cautions. Add one: a repair is not handed over without them.',
	'printing-worker-failed':
		'The pages could not be made. Close other pages to free memory and try again; the tables carry the same cautions.',

	// The command line
	'command-missing': 'No command was given. Use one of these[: {accepted}].',
	'command-unknown': 'There is no command “{given}”. Use one of these[: {accepted}].',
	'option-unknown': 'There is no option “{option}” here. Use one of these[: {accepted}].',
	'option-without-value': 'The option {option} needs a value. Write it after it[, as {example}].',
	'option-with-value': 'The option {option} takes no value. Leave “{text}” out.',
	'option-twice': 'The option {option} was given twice. Give it once.',
	'option-missing': 'The option {option} is missing. Give it[, as {example}].',
	'option-unusable-with': 'The option {option} cannot be used with {other}. Leave one of them out.',
	'choice-unknown': '“{text}” is not one of the choices. Use one of these[: {accepted}].',
	'pair-unreadable': '“{text}” cannot be read. Write it[ as {example}].',
	'share-unreadable': '“{text}” is not a share. Write it as 25 % or 0.25, from 0 to 1.',
	'argument-missing': 'The {argument} is missing. Give it[, as {example}].',
	'argument-unexpected': '“{text}” is one word too many. Put quotes round a value with spaces.'
};
