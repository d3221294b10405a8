// Plants recommended for the winter garden, and what they show then. A bare genus stands for "in variety".
import type { WinterInterest } from "../../lib/plants/published-lists";

const fruit = (printed: string, ...names: string[]): WinterInterest => ({ printed, ...(names.length ? { names } : {}), kinds: ["fruit"], what: "fruit in winter" });
const twigs = (printed: string, what: string, ...names: string[]): WinterInterest => ({ printed, ...(names.length ? { names } : {}), kinds: ["bark"], what });
const form = (printed: string, what: string): WinterInterest => ({ printed, kinds: ["structure", "bark"], what });
const bloom = (printed: string): WinterInterest => ({ printed, kinds: ["bloom"], what: "bloom in late winter" });

/** Source: A. D. Taylor (1921), The Complete Garden, plants whose fruit is valuable in the winter months. */
export const WINTER_FRUIT_1921: readonly WinterInterest[] = [
  fruit("Berberis (in variety)", "Berberis"),
  fruit("Celastrus scandens"),
  fruit("Crataegus (in variety)", "Crataegus"),
  fruit("Ilex opaca"),
  fruit("Ilex verticillata"),
  fruit("Ligustrum ibota", "Ligustrum obtusifolium", "Ligustrum obtusifolium var. regelianum"),
  fruit("Ligustrum vulgare"),
  fruit("Myrica cerifera", "Morella cerifera"),
  fruit("Pyracantha coccinea"),
  fruit("Rhodotypos kerrioides", "Rhodotypos scandens"),
  fruit("Rhus glabra"),
  fruit("Rhus typhina"),
  fruit("Rosa blanda"),
  fruit("Rosa multiflora"),
  fruit("Rosa rugosa"),
  fruit("Viburnum americanum", "Viburnum opulus var. americanum", "Viburnum trilobum"),
  fruit("Viburnum dilatatum"),
  fruit("Viburnum opulus"),
];

/** Source: L. H. Bailey (1910), Manual of Gardening, list of shrubs for the northern United States. */
export const WINTER_SHRUBS_1910: readonly WinterInterest[] = [
  twigs("Cornus alba", "deep red branches"),
  twigs("Cornus stolonifera", "red twigs", "Cornus sericea"),
  twigs("Cornus Baileyi", "colored twigs", "Cornus sericea 'Baileyi'"),
  fruit("Ilex verticillata"),
  twigs("Kerria Japonica", "green twigs", "Kerria japonica"),
  fruit("Symphoricarpos racemosus", "Symphoricarpos albus"),
  fruit("Berberis Thunbergii", "Berberis thunbergii"),
];

/** Source: Purdue Extension, Marion County, reprinted by an extension office in Delaware, January 2009. */
export const WINTER_LANDSCAPE_2009: readonly WinterInterest[] = [
  twigs("Cornus alba", "red or yellow twigs"),
  twigs("Cornus sericea", "red or yellow twigs"),
  twigs("Kerria japonica", "green twigs"),
  form("Euonymus alatus", "corky wings"),
  fruit("Aronia arbutifolia"),
  fruit("Rhodotypos", "Rhodotypos scandens"),
  fruit("Myrica pensylvanica", "Morella pensylvanica", "Myrica pensylvanica"),
  fruit("Malus"),
  fruit("Crataegus phaenopyrum"),
  fruit("Crataegus viridis 'Winter King'"),
  bloom("Galanthus"),
  bloom("Hamamelis"),
  form("Corylus avellana 'Contorta'", "twisted stems"),
  form("Cornus alternifolia", "layered form"),
];
