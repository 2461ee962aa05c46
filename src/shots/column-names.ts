import type { MetricKey } from "./metrics.ts";
import { squash } from "./words.ts";

/** What a column of a pasted table can be taken for. */
export type ColumnKey = MetricKey | "club" | "build" | "shot" | "time" | "keep";

/**
 * The headings that stand for a column, in the trade's usual spellings and the commonest German, French and Spanish
 * ones (common practice, no source). Looked up by `squash`, so case, accents, gaps and
 * abbreviations do not matter; units are taken off first.
 */
const NAMES: Record<ColumnKey, string> = {
  club: "club, club name, club type, club used, head, club head, schlager, schlagerkopf, golfschlager, palo, baton",
  build: `build, build name, setup, set up, config, configuration, combo, combination, club build, shaft build,
    test build, aufbau, konfiguration, montage, configuracion, montaje`,
  shot: `shot, shot number, shot id, stroke, stroke number, hit, hit number, swing, swing number,
    schlag, schlag number, schlagnummer, coup, coup number, golpe, numero de golpe, numero`,
  time: "time, timestamp, time stamp, date time, datetime, shot time, time of day, uhrzeit, zeit, zeitpunkt, heure, hora",
  keep: `keep, kept, use, used, include, included, in use, valid, good shot, behalten, verwenden, gultig, garder, inclure,
    valide, incluir, usar, valido`,
  clubSpeed: `club speed, club head speed, clubhead speed, head speed, swing speed, chs, cs, ch speed,
    schlagerkopfgeschwindigkeit, schlagergeschwindigkeit, schlaggeschwindigkeit, kopfgeschwindigkeit,
    schlagerkopfspeed, vitesse de club, vitesse club, vitesse du club, vitesse tete de club,
    vitesse de la tete de club, vitesse tete, velocidad de palo, velocidad del palo, velocidad palo,
    velocidad de cabeza, velocidad de la cabeza del palo, velocidad de swing, vel palo, vel cabeza, vel cabeza palo, vel swing, vit club, vit tete, schlagerkopfgeschw, schlagergeschw, kopfgeschw, schl geschw, schlkopfgeschw, schl kopf geschw`,
  attack: `attack, attack angle, angle of attack, aoa, aa, vertical attack angle, vertical attack, club attack angle,
    eintreffwinkel, angriffswinkel, treffwinkel, angle d attaque, angle attaque, angulo de ataque, angulo ataque`,
  path: `path, club path, clubhead path, club head path, swing path, head path, path angle, club path angle,
    horizontal club path, cp, schwungbahn, schlagerbahn, schwungpfad, schlagerpfad, chemin de club,
    chemin du club, trajectoire du club, trayectoria del palo, trayectoria de palo, camino del palo`,
  face: `face, face angle, club face, club face angle, clubface angle, clubface, face to target, face angle to target,
    face target, face to target angle, ftt, fa, schlagflache, schlagflachenwinkel, schlagflachenstellung,
    schlagflache zum ziel, angle de face, angle de la face, angle face, face cible, angulo de cara,
    angulo de la cara, cara, cara al objetivo`,
  faceToPath: `face to path, face path, face to path angle, face angle to path, ftp, f2p, face 2 path, f t p,
    schlagflache zur schwungbahn, schlagflache zu schwungbahn, schlagflache zur bahn, face chemin,
    face au chemin, face par rapport au chemin, cara a trayectoria, cara respecto a trayectoria, cara trayectoria`,
  dynamicLoft: `dynamic loft, dynamic loft angle, delivered loft, loft delivered, loft at impact, impact loft, dl,
    dynamischer loft, loft dynamisch, loft dynamique, loft dinamico`,
  spinLoft: "spin loft, spinloft, spin loft angle, sl, loft de spin, loft spin",
  strikeX: `strike x, strike across, impact x, face x, face impact x, impact offset, impact horizontal, horizontal impact,
    face impact horizontal, face impact lateral, impact lateral, lateral impact, strike horizontal, horizontal strike,
    strike lateral, lateral strike, horizontal face impact, lateral face impact, horizontal impact location,
    impact location horizontal, impact location x, strike location x, strike location horizontal, toe heel, heel toe,
    strike toe heel, impact toe heel, strike heel toe, impact heel toe, impact position x, strike position x,
    horizontal strike location, strike offset, impact offset horizontal, treffpunkt horizontal, treffpunkt x,
    impact horizontale, impacto horizontal`,
  strikeY: `strike y, strike height, impact y, face y, face impact y, impact height, impact vertical, vertical impact,
    face impact vertical, strike vertical, vertical strike, vertical face impact, vertical impact location,
    impact location vertical, impact location y, strike location y, strike location vertical, high low, low high,
    strike high low, impact high low, impact position y, strike position y, vertical strike location,
    face impact height, impact offset vertical, treffpunkt vertikal, treffpunkt y, treffpunkt hohe,
    impact verticale, impacto vertical`,
  ballSpeed: `ball speed, bs, initial ball speed, ball initial speed, initial speed,
    ballgeschwindigkeit, vitesse de balle, vitesse balle, vitesse de la balle, velocidad de bola,
    velocidad de la bola, velocidad bola, velocidad de la pelota, velocidad de pelota, vel bola, vel pelota, vit balle, ballgeschw`,
  smash: `smash, smash factor, smashfactor, sf, smash faktor, smashfaktor,
    facteur de smash, facteur smash, facteur d impact, factor de smash, factor smash, factor de impacto`,
  launch: `launch, launch angle, vla, la, launch v, launch vertical, vertical launch, vertical launch angle,
    launch angle v, launch angle vertical, v launch, launch angle up, take off angle, takeoff angle, vert la,
    elevation, elevation angle, abflug, abflugwinkel, startwinkel, abflugwinkel vertikal, angle de decollage,
    angle de lancement, angle lancement, angle d envol, angulo de lanzamiento, angulo de salida, angulo lanzamiento, angulo lanz, ang lanz, ang lanzamiento, ang lancement, ang decollage, startw, abflugw`,
  direction: `direction, launch direction, hla, ld, launch h, launch horizontal, horizontal launch,
    horizontal launch angle, launch angle h, launch angle horizontal, h launch, azimuth, azimuth angle,
    launch azimuth, side angle, launch side angle, start direction, start line, ball direction, start angle,
    horizontal angle, launch lateral, lateral launch, abflugrichtung, startrichtung, richtung,
    direction de lancement, direction lancement, direction de depart, direction d envol,
    direccion de lanzamiento, direccion de salida, direccion, direccion lanzamiento, dir lanz, dir lanzamiento, dir lancement`,
  spin: `spin, spin rate, total spin, spin total, ball spin, spinrate, sr, launch spin, initial spin, rpm, spin speed,
    gesamtspin, drall, spinrate gesamt, spin gesamt, taux de spin, taux spin, taux de rotation, rotation,
    tasa de spin, tasa de giro, efecto, spin totale, spin de la bola, giro, giro total, rot`,
  spinAxis: `spin axis, axis, axis tilt, spin axis tilt, spin tilt, tilt axis, spin axis angle, axis angle, tilt angle, sa,
    spin tilt axis, spin tilt angle, spinachse, drehachse, spin achse, achse, axe de spin, axe du spin, axe spin,
    axe de rotation, eje de spin, eje de giro, eje spin, eje`,
  backspin: `back spin, backspin, back spin rate, backspin rate, bspin, b spin, bksp, spin back, ruckwartsdrall,
    spin arriere, retro, effet retro, retroceso, efecto retroceso, spin de retroceso`,
  sidespin: `side spin, sidespin, side spin rate, sidespin rate, sspin, s spin, sdsp, spin side, seitendrall, seitwartsdrall,
    spin lateral, effet lateral, efecto lateral`,
  height: `height, peak height, max height, maximum height, apex, apex height, peak, max ht, peak ht, height max, hmax,
    trajectory height, ball height, apex of flight, hohe, flughohe, max hohe, maximale hohe, scheitelhohe,
    maximale flughohe, scheitelpunkt, hauteur, hauteur max, hauteur maximale, apogee, altura, altura max,
    altura maxima, apice, altura maxima, apice, haut max, alt max`,
  landingAngle: `landing angle, landing, descent angle, angle of descent, angle of landing, descent, land, decent angle,
    landing angle vertical, vertical landing angle, aod, da, landewinkel, einfallswinkel,
    auftreffwinkel, angle d atterrissage, angle atterrissage, angle de descente, angle de chute,
    angulo de aterrizaje, angulo de descenso, angulo de caida, angulo aterrizaje, ang caida, ang descenso, ang descente, ang atterrissage, landew`,
  flightTime: `flight time, hang time, hangtime, time of flight, tof, airtime, air time, carry time, ball flight time,
    flugzeit, flugdauer, temps de vol, tiempo de vuelo, duree de vol`,
  carry: `carry, carry distance, carry flat, carry length, carry flat length, flat carry, carry actual, cd, carry dist,
    carry dst, carryweite, fluglange, carry distanz, carry weite, carry lange, distance de carry, distance carry,
    portee, distancia de carry, distancia carry, vuelo, distancia de vuelo`,
  total: `total, total distance, total length, total carry and roll, carry and roll, overall distance, distance total,
    carry roll, total flat, total dst, td, gesamt, gesamtweite, gesamtlange, gesamtdistanz, gesamtstrecke,
    distance totale, totale, distancia total, dist totale, dist total`,
  offline: `offline, off line, offline carry, carry offline, side, side carry, carry side, lateral, lateral distance,
    dispersion, lateral dispersion, side distance, offline distance, distance offline, deviation distance,
    lateral carry, carry lateral, carry deviation, lateral deviation, deviation, side deviation, offset,
    carry side distance, horizontal distance, from pin lateral, carry dispersion, left right, offline yards,
    seite, seitlich, seitenabweichung, seitliche abweichung, abweichung, seite carry, ecart lateral, ecart,
    deviation laterale, lateral carry, dispersion laterale, desviacion, desviacion lateral, lateralidad, desv, desv lateral, ecart lat, abw, seitl abw, seitl abweichung`,
};

/** Taken only where no better-named column of the table already stands for the same thing. */
const WEAK_NAMES: Partial<Record<ColumnKey, string>> = {
  build: "shaft, shaft name, shafts, shaft model, shaft used, schaft, schaftname, manche, varilla, vara",
  shot: "number, id, shot no, n, index, seq, sequence",
  time: "date, datum, fecha, day, tag",
  club: "clubs, iron, eisen, fer, hierro",
  offline:
    "side total, total side, offline total, total offline, total lateral, lateral total, total dispersion",
};

/** What a heading stands for; a weak one gives way to any other column that claims the same. */
export interface ColumnName {
  readonly key: ColumnKey;
  readonly weak: boolean;
}

/** Headings without gaps, each with what it stands for. */
export const COLUMN_NAMES: ReadonlyMap<string, ColumnName> = collect();

function collect(): Map<string, ColumnName> {
  const names = new Map<string, ColumnName>();
  for (const [table, weak] of [
    [NAMES, false],
    [WEAK_NAMES, true],
  ] as const) {
    for (const [key, list] of Object.entries(table) as [ColumnKey, string][]) {
      for (const name of [key, ...list.split(",")]) {
        const squashed = squash(name);
        if (!names.has(squashed)) names.set(squashed, { key, weak });
      }
    }
  }
  return names;
}
