// Growth and height classes of native trees in Missouri; the classes as published, the common names given their botanical ones.
// Source: Missouri Department of Conservation, Tree Growth Information.
import type { PublishedGrowth } from "../../lib/plants/published-lists";
import type { Range } from "../../lib/plants/taxon";

/** Classes of mature height; the open ends are given a bound. */
const UNDER_30: Range = [8, 30];
const FROM_30_TO_60: Range = [30, 60];
const OVER_60: Range = [60, 120];

const row = (printed: string, name: string, growth: PublishedGrowth["growth"], heightFt: Range): PublishedGrowth => ({ printed, names: [name], growth, heightFt });

/** Left out: hawthorn, blackberry (no species named), Ward's willow (not a garden plant). */
export const GROWTH_MISSOURI: readonly PublishedGrowth[] = [
  row("American sycamore", "Platanus occidentalis", "fast", OVER_60),
  row("Black gum", "Nyssa sylvatica", "slow", OVER_60),
  row("Black haw", "Viburnum prunifolium", "slow", UNDER_30),
  row("Black locust", "Robinia pseudoacacia", "fast", OVER_60),
  row("Black oak", "Quercus velutina", "medium", OVER_60),
  row("Black walnut", "Juglans nigra", "medium", OVER_60),
  row("Bur oak", "Quercus macrocarpa", "slow", OVER_60),
  row("Cherrybark oak", "Quercus pagoda", "fast", OVER_60),
  row("Deciduous holly", "Ilex decidua", "slow", UNDER_30),
  row("Downy serviceberry", "Amelanchier arborea", "medium", UNDER_30),
  row("Eastern cottonwood", "Populus deltoides", "fast", OVER_60),
  row("Eastern redbud", "Cercis canadensis", "medium", UNDER_30),
  row("Flowering dogwood", "Cornus florida", "medium", UNDER_30),
  row("Gray dogwood", "Cornus racemosa", "medium", UNDER_30),
  row("Hackberry", "Celtis occidentalis", "medium", OVER_60),
  row("Kentucky coffee tree", "Gymnocladus dioicus", "slow", OVER_60),
  row("Nannyberry viburnum", "Viburnum lentago", "fast", UNDER_30),
  row("Northern red oak", "Quercus rubra", "medium", OVER_60),
  row("Nuttall oak", "Quercus texana", "fast", OVER_60),
  row("Osage orange", "Maclura pomifera", "fast", FROM_30_TO_60),
  row("Pawpaw", "Asimina triloba", "slow", FROM_30_TO_60),
  row("Pecan", "Carya illinoinensis", "slow", OVER_60),
  row("Persimmon", "Diospyros virginiana", "slow", FROM_30_TO_60),
  row("Pin oak", "Quercus palustris", "fast", OVER_60),
  row("Red mulberry", "Morus rubra", "fast", FROM_30_TO_60),
  row("River birch", "Betula nigra", "fast", FROM_30_TO_60),
  row("Roughleaf dogwood", "Cornus drummondii", "medium", UNDER_30),
  row("Scarlet oak", "Quercus coccinea", "medium", OVER_60),
  row("Shagbark hickory", "Carya ovata", "slow", OVER_60),
  row("Shellbark hickory", "Carya laciniosa", "slow", OVER_60),
  row("Shumard oak", "Quercus shumardii", "medium", OVER_60),
  row("Silver maple", "Acer saccharinum", "fast", OVER_60),
  row("Sweet gum", "Liquidambar styraciflua", "medium", OVER_60),
  row("Tulip tree", "Liriodendron tulipifera", "medium", OVER_60),
  row("White oak", "Quercus alba", "slow", OVER_60),
  row("Wild plum", "Prunus americana", "fast", UNDER_30),
  row("Bald cypress", "Taxodium distichum", "medium", OVER_60),
  row("Eastern red cedar", "Juniperus virginiana", "slow", UNDER_30),
];
