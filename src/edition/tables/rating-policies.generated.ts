// Generated from tables/rating-policies.json by "npm run generate"; do not edit.
import type { PolicySet } from "../policy.js";
import type { RatingPolicy } from "../rating-policy.js";

export const equipmentGroundingConductorPolicies: PolicySet<RatingPolicy> = {
  id: "equipment-grounding-conductor",
  byEdition: {
    "2008": {
      increase: "any",
      shared: "each-circuit",
      qualifiedPerson: false,
      cap: "set",
      floor: null,
      basis: {
        rule: { section: "250.122(A)", evidence: "carried" },
        increase: { section: "250.122(B)", evidence: "carried" },
        shared: { section: "250.122(C)", evidence: "carried" },
        cap: { section: "250.122(A)", evidence: "carried" },
      },
    },
    "2011": {
      increase: "any",
      shared: "each-circuit",
      qualifiedPerson: false,
      cap: "set",
      floor: null,
      basis: {
        rule: { section: "250.122(A)", evidence: "single" },
        increase: { section: "250.122(B)", evidence: "single" },
        shared: { section: "250.122(C)", evidence: "single" },
        cap: { section: "250.122(A)", evidence: "single" },
      },
    },
    "2014": {
      increase: "any",
      shared: "each-circuit",
      qualifiedPerson: false,
      cap: "set",
      floor: null,
      basis: {
        rule: { section: "250.122(A)", evidence: "bracketed" },
        increase: { section: "250.122(B)", evidence: "memory" },
        shared: { section: "250.122(C)", evidence: "bracketed" },
        cap: { section: "250.122(A)", evidence: "bracketed" },
      },
    },
    "2017": {
      increase: "from-minimum-ampacity",
      shared: "each-circuit",
      qualifiedPerson: false,
      cap: "set",
      floor: null,
      basis: {
        rule: { section: "250.122(A)", evidence: "single" },
        increase: { section: "250.122(B)", evidence: "single" },
        shared: { section: "250.122(C)", evidence: "single" },
        cap: { section: "250.122(A)", evidence: "single" },
      },
    },
    "2020": {
      increase: "not-for-temperature-or-number",
      shared: "each-circuit",
      qualifiedPerson: true,
      cap: "set",
      floor: null,
      basis: {
        rule: { section: "250.122(A)", evidence: "single" },
        increase: { section: "250.122(B)", evidence: "single" },
        shared: { section: "250.122(C)", evidence: "single" },
        cap: { section: "250.122(A)", evidence: "single" },
      },
    },
    "2023": {
      increase: "not-for-temperature-or-number",
      shared: "each-circuit",
      qualifiedPerson: true,
      cap: "set",
      floor: null,
      basis: {
        rule: { section: "250.122(A)", evidence: "single" },
        increase: { section: "250.122(B)", evidence: "single" },
        shared: { section: "250.122(C)", evidence: "single" },
        cap: { section: "250.122(A)", evidence: "single" },
      },
    },
    "2026": {
      increase: "not-for-temperature-or-number",
      shared: "each-circuit",
      qualifiedPerson: true,
      cap: "set",
      floor: null,
      basis: {
        rule: { section: "250.122", evidence: "carried" },
        increase: { section: "250.122", evidence: "carried" },
        shared: { section: "250.122", evidence: "carried" },
        cap: { section: "250.122(A)", evidence: "carried" },
      },
    },
  },
};

export const equipmentBondingJumperPolicies: PolicySet<RatingPolicy> = {
  id: "equipment-bonding-jumper",
  byEdition: {
    "2008": {
      increase: "any",
      shared: "each-circuit",
      qualifiedPerson: false,
      cap: "conductor",
      floor: {
        copper: "14 AWG",
        aluminum: "14 AWG",
        citation: { section: "250.102(D)", evidence: "carried" },
      },
      basis: {
        rule: { section: "250.102(D)", evidence: "bracketed" },
        increase: { section: "250.122(B)", evidence: "carried" },
        shared: { section: "250.102(D)", evidence: "carried" },
        cap: { section: "250.102(D)", evidence: "carried" },
      },
    },
    "2011": {
      increase: "any",
      shared: "each-circuit",
      qualifiedPerson: false,
      cap: "set",
      floor: null,
      basis: {
        rule: { section: "250.102(D)", evidence: "single" },
        increase: { section: "250.122(B)", evidence: "single" },
        shared: { section: "250.102(D)", evidence: "single" },
        cap: { section: "250.122(A)", evidence: "single" },
      },
    },
    "2014": {
      increase: "any",
      shared: "each-circuit",
      qualifiedPerson: false,
      cap: "set",
      floor: null,
      basis: {
        rule: { section: "250.102(D)", evidence: "bracketed" },
        increase: { section: "250.122(B)", evidence: "memory" },
        shared: { section: "250.102(D)", evidence: "bracketed" },
        cap: { section: "250.122(A)", evidence: "bracketed" },
      },
    },
    "2017": {
      increase: "from-minimum-ampacity",
      shared: "each-circuit",
      qualifiedPerson: false,
      cap: "set",
      floor: null,
      basis: {
        rule: { section: "250.102(D)", evidence: "single" },
        increase: { section: "250.122(B)", evidence: "single" },
        shared: { section: "250.102(D)", evidence: "single" },
        cap: { section: "250.122(A)", evidence: "single" },
      },
    },
    "2020": {
      increase: "not-for-temperature-or-number",
      shared: "each-circuit",
      qualifiedPerson: true,
      cap: "set",
      floor: null,
      basis: {
        rule: { section: "250.102(D)", evidence: "single" },
        increase: { section: "250.122(B)", evidence: "single" },
        shared: { section: "250.102(D)", evidence: "single" },
        cap: { section: "250.122(A)", evidence: "single" },
      },
    },
    "2023": {
      increase: "not-for-temperature-or-number",
      shared: "each-circuit",
      qualifiedPerson: true,
      cap: "set",
      floor: null,
      basis: {
        rule: { section: "250.102(D)", evidence: "single" },
        increase: { section: "250.122(B)", evidence: "single" },
        shared: { section: "250.102(D)", evidence: "single" },
        cap: { section: "250.122(A)", evidence: "single" },
      },
    },
    "2026": {
      increase: "not-for-temperature-or-number",
      shared: "each-circuit",
      qualifiedPerson: true,
      cap: "set",
      floor: null,
      basis: {
        rule: { section: "250.102(D)", evidence: "carried" },
        increase: { section: "250.122", evidence: "carried" },
        shared: { section: "250.102(D)", evidence: "carried" },
        cap: { section: "250.122(A)", evidence: "carried" },
      },
    },
  },
};
