/**
 * The words on sign-in cards: common, fit for children, four to seven letters, none that sounds like
 * another of the list. Three of them give more than 31 bits. Adding or removing words is safe: a
 * card's words are kept only as a hash and never looked up here again.
 */
export const cardWords: readonly string[] = `
able above acorn across active actor admiral advice agile airport alarm album alert alley almond
almost along alpaca always amber amount anchor angle animal ankle answer antenna anthem antler
apple apricot apron arcade arch area arena around arrive arrow artist ascent ashore aspen atlas
atom attic aunt author autumn avenue avocado awake award away badge badger bagel baker bakery
balance balcony ball ballet balloon bamboo band banjo banner barge barista bark barley barn
barrel basil basin basket baton battery bayou beach beacon bead beagle beak beam bean beard
bedroom beetle begin begonia bell bellow belt bench beret berry better beyond bicycle billow
birch bird biscuit bison bistro blanket blaze blend blink block bloom blossom blouse blue board
boat bobbin bobcat bold bolt bonfire bonnet book boot border borrow bottle boulder bounce bowl
bowler bracket braid brain branch brass brave bread breeze brick bridge brief bright broad
bronze brook broom broth brother brush bubble bubbly bucket buckle budget buffalo bugle builder
bulb bundle bunny burger burrow butter button cabbage cabin cable cactus cadet cake camel camera
camp camper canal canary candle canoe canteen canvas canyon cape captain caramel caravan careful
cargo carol carpet carrot cart cartoon carve cascade cashew castle casual cattle cave cavern
cedar ceiling celery cello central century chair chalk channel chapter charm chart cheer cheese
cheetah cherry chess chief chime chimney chip chisel choir chorus cinder cinema circle circus
citrus city clap clay clean clear clever cliff climate climb cloak clock cloth cloud clover
coach coast coat cobalt cobble cobweb cocoa coffee coin collar college collie column comet
comfort comic common compass concert condor cone cook cookie copper coral cord corgi cork corn
corner cosy cottage cotton country couple course court cousin cover cowbell coyote crackle
cradle craft crane crater crayon cream creek crest crew cricket crimson crisp crocus crown
cruise crumb crumble crunch crystal cube cuckoo culture cumin curious curl curlew curtain curve
cushion custard cycle cygnet dahlia daily dairy daisy damson dance dapple daring dash dawn
debate decade deck degree delight delta dentist depot depth desert design desk dessert detail
diagram dial diamond diary dice digest digital dill dingo dinner disc diver dock doctor dolphin
dome donate doodle door double dough dove dozen dragon drama drawer dream dress drift drill
driver drizzle drum duck duet dune dusk dust duvet dynamo eager eagle early earth easel east
eastern easy echo edge edition editor effort egret eight eland elastic elbow elder elegant
eleven elite ember emerald empty enamel energy engine engrave enjoy enough entry equal equator
eraser ermine errand essay estate estuary evening event every exact example exhibit expert
explore express extra fable fabric fair falcon family famous fancy farm farmer fathom feast
feather felt fence fennel fern ferret ferry fiction fiddle fidget field fifteen fifty figure
film final finch finger finish first fish fjord flag flame flannel flap flask fleece flight
flint float flock floor flour flurry flute flutter foam focus fold folder folk follow foot
forest forge fork fortune forward fossil frame freckle freeze fresh fridge friend fringe frisbee
frog frond frost fruit full funnel future gable gadget gala galaxy gallery gallop garage garden
garland garlic garnet gate gather gazelle gazette gecko genius gentle geology geyser giant
gibbon gift ginger giraffe glacier glad glance glass glaze glide glider glimmer glitter globe
glove glow gnome goal goat gold golden golf grace grain grammar grand granite granola graph
grass gravel gravity great green grid grill group grove guava guest guide guitar gull gumdrop
guppy gust gymnast habit halibut hallway halo hammer hammock hamster hand handle happy harness
harp harvest hatch haven hawk hazel heart heath heather hedge height hello helmet help herb
herbal herd heron hexagon hiker hiking hill hinge history hive hobby holiday hollow holly home
honest honey hood hoof hoop hope hopeful horizon horn horse hotel house human humble hundred
hurdle hydrant hyphen iceberg icicle ideal igloo iguana image imagine impala index indigo
inkwell inlet input insect inside inspire invent iris iron island ivory jacket jade jaguar
jasmine jaunty jelly jersey jester jetty jewel jigsaw jingle jockey jogger join joke jolly
journal journey joyful juggle juice jumble jumper jungle junior juniper karate kayak keel keeper
kelp kennel kestrel ketchup kettle keyhole kilt kind kindle king kingdom kiosk kipper kitchen
kite kitten kiwi knee knitted knoll knot koala label lace ladder lagoon lake lamb lamp lantern
laptop lapwing larch large lark laser lasso latch later lattice laugh launch laundry laurel lava
lawn leader leaf league learn leather lecture ledge legend lemon lemur lens lentil leopard
lesson letter lettuce level library lichen light lilac lily lime limpet linen linnet lion liquid
listen lively lizard llama lobby lobster local lock locket lodge logic long loop lotus lounge
loyal lucky luggage lunar lunch lupin lynx lyric macaw magenta magic magnet magpie mallard
mallet mammal manatee mango manor mantle maple marble march margin marina marker market marlin
marmot maroon marsh marvel mascot mask match matter maze meadow meal measure medley meerkat
mellow melody melon member memory menu merit merry metal meteor method middle mighty mile milk
mill mimosa mineral minnow mint minute mirror mitten mixture mobile mocha model modern modest
moment money month moon moorhen moped morning mosaic moss motor mouse muffin mural museum music
muslin mustard myrtle mystery napkin narrow narwhal nation native nature navy nearby neat nebula
nectar needle neon nephew nest nettle network neutral nibble nickel niece night nimble nine
noble noodle noon north novel nugget number nurse nursery nutmeg nylon oasis oatmeal object oboe
observe ocean octagon octopus office often olive onion opal open opera orange orbit orchard
orchid oregano origami oriole osprey ostrich otter outdoor outfit outing outline outside oval
oven overall oxbow oxygen oyster packet paddle page pagoda paint painter palace palm pancake
panda panel panther papaya paper paprika parade parcel parent park parrot parsley parsnip
partner party passage pasta pastel pasture patch path pattern peach peacock peak peanut pearl
pebble pecan pelican pencil penguin penny peony people pepper perch perfect period person petal
petunia phone phrase piano piccolo pickle picnic picture pigeon pigment pillow pilot pine pink
pinto pioneer pipit pitch pixel pizza place plaid plain planet plank plant plaster plate plateau
player plaza pleat plenty plover plum plural pocket poem poet point polar polish polite polka
pollen polygon pompom pond pony popcorn poplar poppy porch portal portion postbox poster potato
potter powder prairie present pretty pretzel primary prince print prism private prize problem
produce project promise proof proud public pudding puddle puffin pulley pulse pumpkin pupil
puppet puppy purple purse puzzle pyramid quail quarry quarter quartz quaver queen quest quick
quiet quill quilt quince quintet quiver quiz quote rabbit race radar radio radish radius raft
railway rain rainbow raisin rally ramble ranch ranger rapid raven ravine reader ready reason
recess recipe record recycle reef reflect region relax relay remote repair report rescue reserve
result return review reward rhubarb rhyme rhythm ribbon rice riddle ridge rigging ripple river
road roast robin robot rocket rodeo roller roof room rooster rope rose rotor round rover rowing
royal rubber ruby rudder rugby ruler rumble runner rural rustic saddle saffron sage sailor salad
salmon salt sample sand sandal sapling sardine sash satchel satin saucer savanna scale scallop
scarf scarlet scene scenic school science scooter score scout screen scribe script sculpt
seagull seal seaside season second secret seed select senior sensor sepia sequin serene series
seven shade shadow shallow shape share sharp shed sheep shelf shell shelter shield shine shingle
shirt shoal shore shovel shower shrub shuttle side signal silence silk silver simple singer
single sister sixteen skate sketch skill skipper skirt skylark slalom sledge sleep sleeve sleigh
slice slide slipper smile smooth snail snooker snow snowman soap soccer social society sock sofa
soft soil solar solid solo sonnet sorbet soup south space spaniel spare spark sparrow special
speech spice spider spinach spindle spiral spirit splash sponge spoon sport spray spring sprint
sprout spruce square squash squeak stable stadium stair stamp stanza staple star starch start
station statue steam stem step stereo stew sticker stilt stitch stoat stone stool stork storm
story stove straw stream street string stripe strong student studio style submit subway sugar
summer summit sunbeam sundial sunny sunrise sunset supper surface swallow swan swap sweater
sweet swift swim swing symbol syrup system tabby tablet tadpole tailor talent talk tandem
tangent tango tape tapir target tartan tassel teacher teal team teapot tempo tennis tent term
terrace texture theme theory thicket thimble thirty thistle thread three thrift throne thumb
thunder thyme ticket tide tiger tile timber time tinsel titan title toast toaster toffee tofu
toga token tomato tonic tonight toolbox topaz topic torch total toucan touch tower town tractor
trade trail train trainer trapeze travel tray treacle treble tree treetop trellis trend trifle
trolley trophy tropic trot trout trumpet tuba tugboat tulip tundra tunnel turbine turkey turnip
turtle tweed twelve twenty twig twin twist ukulele uncle unicorn uniform union unique unit unity
upbeat update upper upright uptown urban useful usual utensil vacant valley value vanilla
variety vase vector vehicle velvet vendor venture venue veranda verb verse version vest viaduct
vibrant victory video view village vine vinegar vintage viola violet violin visit visitor vivid
voice volcano vole volume vowel voyage wafer waffle wagon waiter walk walker wall wallaby walnut
walrus waltz wander warble warbler warm wasabi water wave weather weaver website wedge weekend
welcome western wetland wheat wheel whisker whisper whistle wicker widget width wildcat willow
wind window wing winner winter wisdom wizard wolf wombat wonder wood wool woolly word worker
world wren wrist writer yacht yard yarn year yeast yodel yogurt yonder young youth zany zebra
zenith zephyr zero zest zigzag zinc zipper zither zodiac zone
`
  .trim()
  .split(/\s+/);
