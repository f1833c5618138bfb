// Package noise is what the propeller is heard as, with the engine's measured
// noise added: at 150 m, at a distance of the user's own and at the pilot's
// ear, and how long that ear may stand it.
//
// Tones: steady loading after Gutin and the blades' thickness after Deming, as
// compact sources, summed along the blade (far) or on one ring (near). Between
// the tones: vortex noise by Schlegel, King and Mull's spectrum. Both are for a
// propeller alone in smooth air; what body and cage ahead of it add to the
// tones far off is one allowance, after measurements on ultralights. The
// propeller stands: the Doppler effect of flight at 11 m/s is less than 4 % of
// frequency and is left out, as is the air's own absorption, from memory about
// 1 dB over 150 m at 1 kHz.
//
// Sums are mean squares of sound pressure, Pa². A level is 10 times the
// logarithm of their ratio to the square of 20 µPa.
//
// Sources: Gutin 1936 (NACA TM 1195) in the form of Marte & Kurtz, JPL TR
// 32-1462 (1970); Deming 1937 (NACA TN 605); Garrick & Watkins, NACA Report
// 1198, for the field near the propeller; Schlegel, King & Mull 1966; A-weighting
// of IEC 61672-1, annex E; NIOSH 98-126 and directive 2003/10/EC for exposure.
package noise
