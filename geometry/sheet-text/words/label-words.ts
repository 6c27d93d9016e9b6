/**
 * Words of labels in English, German, French, Spanish, Italian and Dutch. Left: the ideas, joined by '+'. Several
 * languages may share a word; a word that means different things in different ones is not here.
 */
export const labelWords: Readonly<Record<string, string>> = {
  length: 'length, comprimento, long, länge, lang, longueur, longitud, largo, lunghezza, lengte',
  width: 'width, largura, wide, breite, breit, largeur, anchura, ancho, larghezza, breedte',
  height: 'height, tall, high, höhe, hoch, bauhöhe, hauteur, altura, alto, altezza, hoogte',
  depth:
    'depth, profundidade, deep, tiefe, tief, bautiefe, profondeur, profundidad, fondo, profondità, diepte',
  thickness: 'thickness, espessura, thick, dicke, dick, épaisseur, grosor, espesor, spessore, dikte',
  diameter: 'diameter, durchmesser, diamètre, diámetro, diametro',
  size:
    'dimensions, dimension, size, measurements, abmessungen, abmessung, maße, größe, taille, dimensiones, medidas, ' +
    'tamaño, dimensioni, misure, afmetingen, frame, frame size, rahmenmaß, frame dimensions',
  weight: 'weight, weighs, mass, gewicht, poids, peso, masse, masa',
  'weight+gross': 'gross weight, bruttogewicht, poids brut, peso bruto, peso lordo',
  power:
    'power, power consumption, consumption, power draw, leistung, leistungsaufnahme, puissance, consommation, potencia, ' +
    'consumo, potenza, consumo energetico, wattage, watts, nennleistung, rated power, output, output power, ' +
    'puissance nominale, power output, continuous power',
  'design power':
    'tdp, thermal design power, base power, grundleistung, puissance de base, verlustleistung, potencia base, ' +
    'tgp, tbp, total board power, total graphics power, typical board power, graphics card power, board power, ' +
    'recommended for',
  'power+peak':
    'peak power, spitzenleistung, maximum turbo power, boost power, turbo power, puissance de crête, puissance maximale',
  speed:
    'speed, fan speed, rotational speed, speed range, drehzahl, drehzahlbereich, vitesse, vitesse de rotation, velocidad, ' +
    'velocità, velocità di rotazione, toerental, rpm, fan rpm, fan speed range',
  flow:
    'airflow, air flow, flow, volumenstrom, luftdurchsatz, fördervolumen, fördermenge, cfm, débit, débit d air, flux d air, caudal, ' +
    'caudal de aire, portata, portata d aria, luchtstroom, luftstrom',
  pressure:
    'pressure, static pressure, druck, statischer druck, pression, pression statique, presión, presión estática, ' +
    'pressione, pressione statica, air pressure',
  noise:
    'noise, dba, noise level, sound, sound level, lautstärke, geräuschpegel, betriebsgeräusch, schall, schalldruckpegel, ' +
    'niveau sonore, bruit, nivel de ruido, ruido, rumorosità, rumore, geluidsniveau, sound pressure, acoustic noise',
  temperature: 'temperature, operating temperature, temperatur, betriebstemperatur, température, temperatura',
  'temperature+max':
    'temperature limit, limit temperature, tjmax, tj max, tjunction, tjunction max, höchsttemperatur',
  capacity:
    'capacity, kapazität, speicherkapazität, capacité, capacidad, capacità, storage, storage capacity',
  form: 'form, form factor, formfaktor, bauform, format, formato, fattore di forma, factor de forma',
  type: 'type, typ, bauart, tipo, style, kühlertyp, cooler type, kind',
  modular: 'modular, modulaire, modulare, kabelmanagement, cable management, cabling',
  cable: 'cable, cables, kabel, câble, câbles, cavi, cable type, leads',
  efficiency:
    'efficiency, efficiency level, effizienz, effizienzklasse, rendement, eficiencia, efficienza, efficiency rating',
  interface: 'interface, schnittstelle, interfaz, interfaccia, bus',
  maker:
    'maker, manufacturer, brand, hersteller, marque, fabricant, fabricante, marca, produttore, merk, marke',
  model: 'model, model name, modell, modellname, modèle, modelo, modello, product name, produktname',
  card:
    'card, karte, gpu, vga, graphics card, video card, grafikkarte, grafikkarten, carte graphique, tarjeta gráfica, tarjeta, ' +
    'scheda, scheda video, scheda grafica',
  cooler: 'cooler, cpu cooler, kühler, cpu-kühler, ventirad, refroidisseur, cooling, cpu cooling, koeler',
  heatsink:
    'heatspreader, heat spreader, heatsink, heat sink, kühlkörper, dissipateur, disipador, dissipatore, fins',
  fan: 'fan, fans, lüfter, lüftern, ventilateur, ventilateurs, ventilador, ventiladores, ventola, ventole, ventilator, ventilatoren',
  'fan+front': 'front fan, frontlüfter, ventilateur frontal',
  radiator: 'radiator, radiateur, radiador, radiatore, radiators',
  block: 'pump block, water block, block, bloque, cold plate, bloc',
  pump: 'pump, pumpe, pompe, bomba, pompa',
  tube: 'tube, tubes, tubing, hose, hoses, schlauch, schläuche, tuyau, tuyaux, tubo, tubos, tubi',
  supply:
    'power supply, psu, supply, netzteil, alimentation, fuente, fuente de alimentación, alimentatore, voeding, ' +
    'alimentación, alimentazione, power supply unit',
  board: 'board, motherboard, mainboard, carte mère, placa base, scheda madre, moederbord',
  memory: 'memory, ram, speicher, mémoire, memoria, geheugen, arbeitsspeicher',
  module: 'module, modul, módulo, modulo, memory module, speichermodul',
  drive: 'drive, ssd, hdd, laufwerk, festplatte, disque, unidad, disco, nvme, solid state drive, hard drive',
  processor: 'cpu, processor, prozessor, processeur, procesador, processore',
  enclosure: 'case, chassis, enclosure, gehäuse, boîtier, caja',
  package:
    'package, package size, packaging, packing, box, carton, verpackung, emballage, embalaje, retail packaging, shipping, versand, imballo, colis',
  bracket: 'bracket, slotblech, slotblende, équerre',
  slot:
    'slot, slots, pci slot, pci slots, expansion slot, expansion slots, steckplatz, steckplätze, erweiterungssteckplätze, emplacement, ' +
    'emplacements, ranura, ranuras, ranuras de expansión, slot di espansione, slot occupancy, slot width, belegte steckplätze, ' +
    'ranuras ocupadas, slot occupati, emplacements d extension, sockets',
  connector:
    'connector, connectors, power input, power inputs, power connector, power connectors, external power, auxiliary power, power sockets, ' +
    'power socket, anschluss, anschlüsse, stromanschluss, stromanschlüsse, stecker, connecteur, connecteurs, conector, ' +
    'conectores, connettore, connettori, plug, plugs, connecteur d alimentation, connecteurs d alimentation, ' +
    'conectores de alimentación, supplementary power',
  tray: 'tray, motherboard tray, plateau, bandeja, mainboard-tray, board tray',
  'hole pattern':
    'hole pattern, hole patterns, mounting hole pattern, mounting hole patterns, lochbild, lochabstand, hole spacing',
  max: 'max, maximum, maximal, maximale, maximum of, máxima, máximo, máx, massima, massimo, maximaler, maximales, bis, up to, bis zu, jusqu à, hasta, fino a',
  min: 'min, minimum, minimal, minimale, mínima, mínimo, minima',
  idle: 'idle, leerlauf, standby, repos, reposo',
  load: 'active, operating, betrieb, load, full load, at full load, volllast, at full speed, in use',
  peak: 'peak, turbo, boost, spitze',
  recommended:
    'recommended, recommendation, benötigt, benötigte, benötigtes, suggested, required, minimum required, empfohlen, empfohlenes, empfohlene, recommandée, ' +
    'recommandé, recomendada, consigliato',
  behind: 'behind, hinter, derrière, detrás de, detrás, dietro',
  clearance:
    'clearance, spazio, space, room, cable space, kabel, platz, espace, espacio, limit, freiraum, space for cables, platz für kabel',
  count:
    'number of, anzahl, nombre d, nombre de, número de, numero di, aantal, quantity, pcs, pieces, stück, piezas',
  inner: 'inner, internal, interior, innen, intérieur',
  outer: 'outer, external, exterior, outside, außen',
  'outer+size': 'außenmaße, external size, external dimensions, outer dimensions',
  'outer diameter': 'outer diameter, außendurchmesser',
  kit: 'kit, kit of 2, kit capacity',
  'each module': 'per module, each module, je modul, par module',
  gross: 'gross, brutto, brut, bruto',
  'with fan':
    'with fan, with fans, incl fan, including fan, including fans, mit lüfter, mit lüftern, inkl lüfter, avec ventilateur, ' +
    'avec ventilateurs, con ventilador, con ventola, con ventole, met ventilator',
  'without fan':
    'without fan, without fans, excl fan, excluding fan, no fan, ohne lüfter, ohne lüftern, sans ventilateur, ' +
    'sin ventilador, senza ventola, senza ventole, zonder ventilator, fins only, fins alone, heatsink only',
  'with front fan':
    'with front fan, with a front fan, mit frontlüfter, avec ventilateur frontal, con ventilador frontal',
  'without front fan': 'without front fan, without a front fan, ohne frontlüfter, sans ventilateur frontal',
  'with plugs':
    'with plugs, including plugs, incl plugs, with connectors, including connectors, with cables, including cables, ' +
    'mit steckern, inkl stecker, inkl kabel, avec connecteurs, with cable, with power plug, including plug, with plug, ' +
    'including power connector, mit stecker',
  'without plugs':
    'without plugs, excluding plugs, without cables, excluding cables, ohne stecker, ohne kabel',
  'with bracket': 'with bracket, including bracket, incl bracket, inkl slotblech, mit slotblech',
  'without bracket': 'without bracket, excluding bracket, excl bracket, ohne slotblech, no bracket',
  'with sink':
    'with heat spreader, with heatspreader, mit heatspreader, mit kühler, with spreader, with heatsink, including heatsink, with heat sink, mit kühlkörper',
};

/** Words that change nothing about what a figure is. */
export const fillerWords =
  'the, of, a, an, for, is, are, it, its, and, und, et, y, e, en, approx, ca, circa, etwa, environ, aprox, about, total, overall, ' +
  'gesamt, at, de, du, des, d, del, della, dell, di, la, le, les, el, los, der, die, das, dem, il, lo, l, pwm, product, ' +
  'each, typ, typical, net, netto, nette, neto, nominal, rated, approximately, mm, in, x, by, per, ddr, unit, ' +
  'slim, im, aluminium, aluminum, copper, one, all, alle, fits, compatible, compatible with, mode, modus, performance, occupies, graphics, top, range, low, the, belegte, occupied, ocupadas, um, auf, full, own, external, ' +
  'pci, pcie, express, main, extern, reale, von, fur, udimm';
