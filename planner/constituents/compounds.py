"""Shallow-water constituents, each the sum of the constituents that make it.

From the names of the IHO list of tidal constituents (Simon and Page): letters with counts,
so that multipliers, phase constant and nodal rule follow from the parts. Where the list
gives one name several phase constants, the one that the parts add up to is taken; tests
compare every line with the list. NO1, M5 and M7 follow the list's own letters, and 2MN2 is
the plain sum, as the Dutch agency has it (the list adds 180 degrees, as for L2).
"""

from __future__ import annotations

from typing import Final

# fmt: off
COMPOUNDS: Final[dict[str, str]] = {
    # long-period
    "SM": "S2 - M2", "SN": "S2 - N2", "2SM": "2*S2 - 2*M2", "2SMN": "2*S2 - M2 - N2",
    # diurnal
    "NJ1": "N2 - J1", "MP1": "M2 - P1", "NUK1": "NU2 - K1", "MK1": "M2 - K1", "MS1": "M2 - S1",
    "LP1": "L2 - P1", "TK1": "T2 - K1", "RP1": "R2 - P1", "KP1": "K2 - P1", "2PO1": "2*P1 - O1",
    "SO1": "S2 - O1", "KQ1": "K2 - Q1", "LAMO1": "LAM2 - O1", "NO1": "N2 - O1",
    # semidiurnal
    "SNU2": "S2 - NU2", "2MN2S2": "2*M2 + N2 - 2*S2",
    "3MKS2": "3*M2 - K2 - S2", "2NS2": "2*N2 - S2", "2NK2S2": "2*N2 + K2 - 2*S2", "OQ2": "O1 + Q1",
    "MNK2": "M2 + N2 - K2", "MNS2": "M2 + N2 - S2", "MNUS2": "M2 + NU2 - S2",
    "2ML2S2": "2*M2 + L2 - 2*S2", "MNK2S2": "M2 + N2 + K2 - 2*S2", "2MS2K2": "2*M2 + S2 - 2*K2",
    "2MK2": "2*M2 - K2", "NLK2": "N2 + L2 - K2", "2MS2": "2*M2 - S2", "SNK2": "S2 + N2 - K2",
    "2KN2S2": "2*K2 + N2 - 2*S2", "MSK2": "M2 + S2 - K2", "OP2": "O1 + P1", "MPS2": "M2 + P1 - S1",
    "KO2": "K1 + O1", "MSP2": "M2 + S1 - P1", "MKS2": "M2 + K2 - S2", "M2(KS)2": "M2 + 2*K2 - 2*S2",
    "2SN(MK)2": "2*S2 + N2 - M2 - K2", "NKM2": "N2 + K2 - M2", "2SK2": "2*S2 - K2",
    "KP2": "K1 + P1", "MSNU2": "M2 + S2 - NU2", "MSN2": "M2 + S2 - N2", "KJ2": "K1 + J1",
    "2KM(SN)2": "2*K2 + M2 - S2 - N2", "2SM2": "2*S2 - M2", "2MS2N2": "2*M2 + S2 - 2*N2",
    "SKM2": "S2 + K2 - M2", "2SNU2": "2*S2 - NU2", "3(SM)N2": "3*S2 - 3*M2 + N2",
    "2SN2": "2*S2 - N2", "SKN2": "S2 + K2 - N2", "3S2M2": "3*S2 - 2*M2",
    "2SK2M2": "2*S2 + K2 - 2*M2", "2MN2": "2*M2 - N2", "3MS2": "3*M2 - 2*S2",
    # terdiurnal
    "MQ3": "M2 + Q1", "NO3": "N2 + O1", "MO3": "M2 + O1", "2MK3": "2*M2 - K1",
    "2NKM3": "2*N2 + K1 - M2", "2MS3": "2*M2 - S1", "2MP3": "2*M2 - P1", "NK3": "N2 + K1",
    "SO3": "S2 + O1", "MP3": "M2 + P1", "MS3": "M2 + S1", "MK3": "M2 + K1", "NSO3": "N2 + S2 - O1",
    "2MQ3": "2*M2 - Q1", "SP3": "S2 + P1", "SK3": "S2 + K1", "2SO3": "2*S2 - O1", "K3": "K2 + K1",
    # quarter-diurnal
    "2MNK4": "2*M2 + N2 - K2", "3NM4": "3*N2 - M2", "2MNS4": "2*M2 + N2 - S2",
    "2MNUS4": "2*M2 + NU2 - S2", "3MK4": "3*M2 - K2", "MNLK4": "M2 + N2 + L2 - K2",
    "3MS4": "3*M2 - S2", "2NKS4": "2*N2 + K2 - S2", "MSNK4": "M2 + S2 + N2 - K2", "MN4": "M2 + N2",
    "MNU4": "M2 + NU2", "2MLS4": "2*M2 + L2 - S2", "MNKS4": "M2 + N2 + K2 - S2",
    "2MSK4": "2*M2 + S2 - K2", "2MRS4": "2*M2 + R2 - S2", "2MKS4": "2*M2 + K2 - S2",
    "SN4": "S2 + N2", "3MN4": "3*M2 - N2", "ML4": "M2 + L2", "NK4": "N2 + K2",
    "2SMK4": "2*S2 + M2 - K2", "MT4": "M2 + T2", "MS4": "M2 + S2", "MR4": "M2 + R2",
    "MK4": "M2 + K2", "2SNM4": "2*S2 + N2 - M2", "2MSN4": "2*M2 + S2 - N2", "SL4": "S2 + L2",
    "2MKN4": "2*M2 + K2 - N2", "SK4": "S2 + K2", "3SM4": "3*S2 - M2", "2SKM4": "2*S2 + K2 - M2",
    "4MS4": "4*M2 - 2*S2", "N4": "2*N2", "M4": "2*M2", "S4": "2*S2", "K4": "2*K2",
    # fifth-diurnal
    "MNO5": "M2 + N2 + O1", "2MQ5": "2*M2 + Q1", "3MK5": "3*M2 - K1", "2MO5": "2*M2 + O1",
    "2NK5": "2*N2 + K1", "3MS5": "3*M2 - S1", "3MP5": "3*M2 - P1", "NSO5": "N2 + S2 + O1",
    "MNK5": "M2 + N2 + K1", "MSO5": "M2 + S2 + O1", "2MP5": "2*M2 + P1", "2MS5": "2*M2 + S1",
    "3MO5": "3*M2 - O1", "2MK5": "2*M2 + K1", "3MQ5": "3*M2 - Q1", "MSP5": "M2 + S2 + P1",
    "MSK5": "M2 + S2 + K1", "3KM5": "3*K1 + M2", "2SP5": "2*S2 + P1", "2SK5": "2*S2 + K1",
    "M5": "2*M2 + M1",
    # sixth-diurnal
    "2(MN)K6": "2*M2 + 2*N2 - K2", "5MKS6": "5*M2 - K2 - S2", "2(MN)S6": "2*M2 + 2*N2 - S2",
    "5M2S6": "5*M2 - 2*S2", "3MNK6": "3*M2 + N2 - K2", "3MNS6": "3*M2 + N2 - S2",
    "3NKS6": "3*N2 + K2 - S2", "3MNUS6": "3*M2 + NU2 - S2", "4MK6": "4*M2 - K2",
    "2NM6": "2*N2 + M2", "4MS6": "4*M2 - S2", "2NMKS6": "2*N2 + M2 + K2 - S2",
    "2MSNK6": "2*M2 + S2 + N2 - K2", "2MN6": "2*M2 + N2", "2MNU6": "2*M2 + NU2",
    "2MNKS6": "2*M2 + N2 + K2 - S2", "3MSK6": "3*M2 + S2 - K2", "3MKS6": "3*M2 + K2 - S2",
    "MTN6": "M2 + T2 + N2", "MSN6": "M2 + S2 + N2", "4MN6": "4*M2 - N2", "2ML6": "2*M2 + L2",
    "MNK6": "M2 + N2 + K2", "MKNU6": "M2 + K2 + NU2", "2(MS)K6": "2*M2 + 2*S2 - K2",
    "2MT6": "2*M2 + T2", "2MS6": "2*M2 + S2", "2MK6": "2*M2 + K2", "2SN6": "2*S2 + N2",
    "3MTN6": "3*M2 + T2 - N2", "3MSN6": "3*M2 + S2 - N2", "MSL6": "M2 + S2 + L2",
    "SNK6": "S2 + N2 + K2", "MKL6": "M2 + K2 + L2", "3MKN6": "3*M2 + K2 - N2",
    "MST6": "M2 + S2 + T2", "2SM6": "2*S2 + M2", "MSK6": "M2 + S2 + K2", "2KM6": "2*K2 + M2",
    "2MSTN6": "2*M2 + S2 + T2 - N2", "2(MS)N6": "2*M2 + 2*S2 - N2", "2MSKN6": "2*M2 + S2 + K2 - N2",
    "N6": "3*N2", "M6": "3*M2", "S6": "3*S2",
    # seventh-diurnal
    "2MNO7": "2*M2 + N2 + O1", "3MQ7": "3*M2 + Q1", "4MK7": "4*M2 - K1", "2NMK7": "2*N2 + M2 + K1",
    "MNSO7": "M2 + N2 + S2 + O1", "2MNK7": "2*M2 + N2 + K1", "2MSO7": "2*M2 + S2 + O1",
    "3MK7": "3*M2 + K1", "MSKO7": "M2 + S2 + K2 + O1", "M7": "3*M2 + M1",
    # eighth-diurnal
    "3M2NS8": "3*M2 + 2*N2 - S2", "4MNS8": "4*M2 + N2 - S2", "5MK8": "5*M2 - K2",
    "2(MN)8": "2*M2 + 2*N2", "5MS8": "5*M2 - S2", "2(MN)KS8": "2*M2 + 2*N2 + K2 - S2",
    "3MSNK8": "3*M2 + S2 + N2 - K2", "3MN8": "3*M2 + N2", "3MNU8": "3*M2 + NU2",
    "3MNKS8": "3*M2 + N2 + K2 - S2", "4MSK8": "4*M2 + S2 - K2", "4MKS8": "4*M2 + K2 - S2",
    "2MSN8": "2*M2 + S2 + N2", "2MNK8": "2*M2 + N2 + K2", "3M2SK8": "3*M2 + 2*S2 - K2",
    "2(NS)8": "2*N2 + 2*S2", "3MT8": "3*M2 + T2", "3MS8": "3*M2 + S2", "3MK8": "3*M2 + K2",
    "2SMN8": "2*S2 + M2 + N2", "2MSL8": "2*M2 + S2 + L2", "MSNK8": "M2 + S2 + N2 + K2",
    "2MST8": "2*M2 + S2 + T2", "2(MS)8": "2*M2 + 2*S2", "2MSK8": "2*M2 + S2 + K2",
    "2(MK)8": "2*M2 + 2*K2", "2SML8": "2*S2 + M2 + L2", "2SKN8": "2*S2 + K2 + N2",
    "MSKL8": "M2 + S2 + K2 + L2", "3SM8": "3*S2 + M2", "2SMK8": "2*S2 + M2 + K2", "M8": "4*M2",
    "S8": "4*S2",
    # ninth-diurnal
    "3MNO9": "3*M2 + N2 + O1", "2(MN)K9": "2*M2 + 2*N2 + K1", "3MNK9": "3*M2 + N2 + K1",
    "4MK9": "4*M2 + K1", "3MSK9": "3*M2 + S2 + K1",
    # tenth-diurnal
    "5MNS10": "5*M2 + N2 - S2", "3M2N10": "3*M2 + 2*N2", "6MS10": "6*M2 - S2",
    "3M2NKS10": "3*M2 + 2*N2 + K2 - S2", "4MSNK10": "4*M2 + S2 + N2 - K2", "4MN10": "4*M2 + N2",
    "4MNU10": "4*M2 + NU2", "5MSK10": "5*M2 + S2 - K2", "5MKS10": "5*M2 + K2 - S2",
    "3MSN10": "3*M2 + S2 + N2", "6MN10": "6*M2 - N2", "4ML10": "4*M2 + L2",
    "3MNK10": "3*M2 + N2 + K2", "2(SN)M10": "2*S2 + 2*N2 + M2", "4MS10": "4*M2 + S2",
    "4MK10": "4*M2 + K2", "2(MS)N10": "2*M2 + 2*S2 + N2", "2MNSK10": "2*M2 + N2 + S2 + K2",
    "3M2S10": "3*M2 + 2*S2", "3MSK10": "3*M2 + S2 + K2", "3SMN10": "3*S2 + M2 + N2",
    "2SMKN10": "2*S2 + M2 + K2 + N2", "3S2M10": "3*S2 + 2*M2", "2(MS)K10": "2*M2 + 2*S2 + K2",
    "M10": "5*M2",
    # eleventh-diurnal
    "4MSK11": "4*M2 + S2 + K1",
    # twelfth-diurnal
    "5M2NS12": "5*M2 + 2*N2 - S2", "3(MN)12": "3*M2 + 3*N2", "6MNS12": "6*M2 + N2 - S2",
    "4M2N12": "4*M2 + 2*N2", "7MS12": "7*M2 - S2", "4M2NKS12": "4*M2 + 2*N2 + K2 - S2",
    "5MSNK12": "5*M2 + S2 + N2 - K2", "5MN12": "5*M2 + N2", "5MNU12": "5*M2 + NU2",
    "6MSK12": "6*M2 + S2 - K2", "4MSN12": "4*M2 + S2 + N2", "4MNK12": "4*M2 + N2 + K2",
    "2(MSN)12": "2*M2 + 2*S2 + 2*N2", "5MT12": "5*M2 + T2", "5MS12": "5*M2 + S2",
    "5MK12": "5*M2 + K2", "6MSN12": "6*M2 + S2 - N2", "3MNKS12": "3*M2 + N2 + K2 + S2",
    "4MST12": "4*M2 + S2 + T2", "4M2S12": "4*M2 + 2*S2", "4MSK12": "4*M2 + S2 + K2",
    "3(MS)12": "3*M2 + 3*S2", "3M2SK12": "3*M2 + 2*S2 + K2", "M12": "6*M2",
    # fourteenth-diurnal
    "5MSN14": "5*M2 + S2 + N2", "5MNK14": "5*M2 + N2 + K2", "6MS14": "6*M2 + S2",
}
# fmt: on
